package dev.offtake.study;

import dev.offtake.part.EngineGauge;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import java.util.Optional;

/** How far the engine's own gauges stand from where they would with a healthy system. */
final class EngineSigns {
  /** A crew that compares two engines calls less than this normal, kg/s (100 lb/h): assumed. */
  private static final double CREW_FUEL = 100 * 0.45359237 / 3600;

  /** Likewise for core speed, a share of full speed: an assumption. */
  private static final double CREW_SPEED = 0.01;

  private EngineSigns() {}

  /** The sign; empty where the shift is not known in both states. */
  static Optional<Sign> of(TwoStates states, EngineGauge gauge) {
    Optional<View> before = states.viewBefore(gauge.name());
    Optional<View> after = states.viewAfter(gauge.name());
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    double was = gauge.shift(before.get());
    double is =
        states.after(gauge.name()).orElse(null) instanceof EngineGauge now
            ? now.shift(after.get())
            : was;
    if (Double.isNaN(was) || Double.isNaN(is)) {
      return Optional.empty();
    }
    Dimension dimension = gauge.parameters().get(0).dimension();
    double limit = limit(dimension);
    Measured measured = new Measured(was, is, limit, limit / 4);
    return Optional.of(
        new Sign(
            Sign.What.ENGINE,
            gauge.name(),
            "",
            gauge.shows() + " shift",
            dimension,
            was,
            is,
            limit,
            "",
            "",
            measured.verdict(),
            Notice.FLIGHT_DECK));
  }

  private static double limit(Dimension dimension) {
    return switch (dimension) {
      case MASS_FLOW -> CREW_FUEL;
      case SHARE -> CREW_SPEED;
      default -> Notice.CREW_TEMPERATURE;
    };
  }
}
