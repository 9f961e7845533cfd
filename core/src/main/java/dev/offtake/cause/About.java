package dev.offtake.cause;

import dev.offtake.part.EngineGauge;
import dev.offtake.part.Gauge;
import dev.offtake.quantity.Dimension;
import java.util.List;

/** What a reading is about. */
public sealed interface About {
  /** Name by which a file finds it again. */
  String name();

  /** Something on a scale: a needle of a gauge, or a test gauge at a port. */
  sealed interface Scaled extends About {
    /** Point where the value is taken. */
    String point();

    /** Whether it is a temperature, else a pressure. */
    boolean temperature();

    /** What a number must measure; {@link Dimension#PRESSURE} where gauge or absolute will do. */
    Dimension dimension();
  }

  /**
   * A needle of a gauge of the system.
   *
   * @param name how it is written: what it reads, or gauge and mark where two read the same
   * @param gauge the gauge; all its readings share its constant error
   * @param needle number of the needle
   */
  record Needle(String name, Gauge gauge, int needle) implements Scaled {
    @Override
    public String point() {
      return gauge.needles().get(needle).reads().point();
    }

    @Override
    public boolean temperature() {
      return gauge.temperature();
    }

    @Override
    public Dimension dimension() {
      return gauge.dimension();
    }
  }

  /**
   * A point where a test gauge was fitted.
   *
   * @param name how it is written
   * @param port test port; empty where the gauge was fitted into the line of a gauge
   * @param point where the port is
   * @param temperature whether a thermometer was fitted, else a pressure gauge
   */
  record Port(String name, String port, String point, boolean temperature) implements Scaled {
    @Override
    public Dimension dimension() {
      return temperature ? Dimension.TEMPERATURE : Dimension.PRESSURE;
    }
  }

  /**
   * Something that is lit or not.
   *
   * @param name full name of the part
   */
  record Lamp(String name) implements About {}

  /**
   * The position of a part, as a person or an indicator sees it.
   *
   * @param name full name of the part
   * @param valve whether it may also stand part open
   * @param positions words of its kind
   */
  record Position(String name, boolean valve, List<String> positions) implements About {
    /** Keeps its list. */
    public Position {
      positions = List.copyOf(positions);
    }
  }

  /**
   * An engine gauge: how far it moves while bleed air is drawn.
   *
   * @param gauge the part
   */
  record EngineNeedle(EngineGauge gauge) implements About {
    @Override
    public String name() {
      return gauge.name();
    }

    /** What a movement measures. */
    public Dimension dimension() {
      return gauge.parameters().get(0).dimension();
    }
  }

  /**
   * The skin of the duct at a point.
   *
   * @param point full name of the point
   */
  record Skin(String point) implements About {
    /** Last word of the name. */
    static final String WORD = " skin";

    @Override
    public String name() {
      return point + WORD;
    }
  }
}
