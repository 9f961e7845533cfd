package dev.offtake.explain;

import dev.offtake.part.Doing;
import dev.offtake.part.EngineGauge;
import dev.offtake.part.Facts;
import dev.offtake.part.Gauge;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What a person sees of a state without opening anything: needles, lights and how far bleed air
 * moves the engine's own gauges. The flight deck comes first, test ports last.
 *
 * @param needles one for each needle
 * @param lights all lights, lit or not
 * @param engine how engine gauges move
 */
public record Panel(List<Needle> needles, List<Lamp> lights, List<Engine> engine) {
  /** Nothing to see. */
  public static final Panel NONE = new Panel(List.of(), List.of(), List.of());

  /** Keeps its lists. */
  public Panel {
    needles = List.copyOf(needles);
    lights = List.copyOf(lights);
    engine = List.copyOf(engine);
  }

  /**
   * A needle.
   *
   * @param gauge full name of its gauge
   * @param mark on the needle; empty where the gauge has one only
   * @param reads what it reads, such as {@code left duct pressure}
   * @param value what is read off it, at the nearest mark: Pa above the gauge's zero, or K
   * @param temperature whether it shows a temperature
   * @param says the same in words, with what happens at an end of the scale
   * @param pegged whether the value lies off the scale
   * @param seen where it is seen; empty when the file does not say
   */
  public record Needle(
      String gauge,
      String mark,
      String reads,
      double value,
      boolean temperature,
      String says,
      boolean pegged,
      String seen) {}

  /**
   * A light: its full name, whether it is lit, and why; the reason is empty for one that is not.
   */
  public record Lamp(String name, boolean lit, String because) {}

  /** How far a gauge of the engine stands from where it would without bleed, and why. */
  public record Engine(String name, String says, String because) {}

  /** A line: a name and what is to be said of it. */
  record Line(String name, String says) {}

  /** Looks at a state. */
  static Panel of(Solution solution, Style style) {
    List<Needle> needles = new ArrayList<>();
    List<Lamp> lights = new ArrayList<>();
    List<Engine> engine = new ArrayList<>();
    List<Part> parts = solution.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      View view = solution.view(i, style);
      if (parts.get(i) instanceof Gauge gauge) {
        needles(gauge, view, style, needles);
      } else if (parts.get(i) instanceof Light light) {
        boolean lit = light.is("lit", view);
        lights.add(new Lamp(light.name(), lit, lit ? light.doing(view).why() : ""));
      } else if (parts.get(i) instanceof EngineGauge gauge) {
        Doing doing = gauge.doing(view);
        engine.add(new Engine(gauge.name(), doing.word(), doing.why()));
      }
    }
    needles.sort(Comparator.comparingInt(Panel::distance));
    return new Panel(needles, lights, engine);
  }

  /** How far a person has to go to see it. */
  private static int distance(Needle needle) {
    String seen = needle.seen().toLowerCase(Locale.ROOT);
    if (seen.contains("flight deck")) {
      return 0;
    }
    return seen.contains("test") ? 2 : 1;
  }

  private static void needles(Gauge gauge, View view, Style style, List<Needle> into) {
    for (int i = 0; i < gauge.needles().size(); i++) {
      Facts.Needle needle = gauge.needles().get(i);
      double value = gauge.read(i, view);
      boolean pegged = gauge.pegged(i, view);
      String says = style.read(value, gauge.dimension(), gauge.step());
      into.add(
          new Needle(
              gauge.name(),
              needle.mark(),
              needle.reads().name(),
              value,
              gauge.temperature(),
              pegged ? says + ", pegged" + beyond(gauge, i, view, style) : says,
              pegged,
              gauge.seen()));
    }
  }

  private static String beyond(Gauge gauge, int needle, View view, Style style) {
    double value = gauge.shows(needle, view);
    Dimension dimension = gauge.dimension();
    String which = value > gauge.scale().high() ? "over" : "under";
    return ": " + style.print(value, dimension) + " is " + which + " its scale";
  }

  /** The whole in lines: a gauge each, then the engine's, then the lights that are lit. */
  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    List<String> gauges = needles.stream().map(Needle::gauge).distinct().toList();
    for (String gauge : gauges) {
      List<Needle> own = needles.stream().filter(n -> n.gauge().equals(gauge)).toList();
      List<String> said = own.stream().map(n -> (n.mark() + " " + n.says()).strip()).toList();
      String seen = own.get(0).seen();
      String where = seen.isEmpty() || seen.equals(gauge) ? "" : " (" + seen + ")";
      lines.add(
          new Line(
              gauge,
              String.join(own.stream().anyMatch(Needle::pegged) ? "; " : ", ", said) + where));
    }
    engine.forEach(e -> lines.add(new Line(e.name(), e.says() + ": " + e.because())));
    List<Lamp> lit = lights.stream().filter(Lamp::lit).toList();
    lit.forEach(lamp -> lines.add(new Line(lamp.name(), "LIT: " + lamp.because())));
    if (lit.isEmpty() && !lights.isEmpty()) {
      lines.add(
          new Line(
              "lights",
              lights.size() == 1 ? "the one is out" : "all " + lights.size() + " are out"));
    }
    return lines;
  }
}
