package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which a {@link ReliefValve} can fail.
 *
 * <p>Rates are orders of magnitude, assumptions; what is noticed and how it is looked for is common
 * practice, no source.
 */
final class ReliefValveModes {
  private static final String UNIT = "relief valve";
  private static final String CRACK = "cracks at";
  private static final String RESEAT = "reseats at";

  private static final Inspection BENCH_CRACK =
      new Inspection(
          "Raise the pressure slowly, note where it opens, lower it and note where it shuts",
          Access.BENCH,
          30,
          "bench with regulated air, gauge in calibration");

  private ReliefValveModes() {}

  static List<Mode> of(ValveBody body) {
    double crack = body.parameters().get(ReliefValve.CRACK).value();
    Extent off =
        new Extent(
            "how far off", Dimension.PRESSURE_DIFFERENCE, 0.02 * crack, 0.2 * crack, 0.85 * crack);
    List<Mode> modes = new ArrayList<>(BodyModes.of(body, UNIT));
    modes.add(
        Mode.named("opens early", UNIT, "Its spring has settled: it opens and reseats too low")
            .extent(off)
            .moves(CRACK, (healthy, by) -> healthy - by)
            .moves(RESEAT, (healthy, by) -> Math.max(0, healthy - by))
            .perMillionHours(10)
            .noticed("It blows in normal running: a roar and hot air at its outlet")
            .inspected(BENCH_CRACK));
    modes.add(
        Mode.named("opens late", UNIT, "Dirt or corrosion holds it: it opens too high")
            .extent(off)
            .moves(CRACK, (healthy, by) -> healthy + by)
            .perMillionHours(10)
            .inspected(BENCH_CRACK));
    modes.add(
        Mode.named("does not reseat", UNIT, "Once open it stays open until the pressure is gone")
            .puts(RESEAT, 0)
            .perMillionHours(10)
            .noticed("It goes on blowing after the pressure has come down")
            .inspected(BENCH_CRACK));
    modes.add(
        Mode.named("spring broken", UNIT, "Nothing holds it shut any more")
            .puts(CRACK, 0)
            .puts(RESEAT, 0)
            .perMillionHours(1)
            .is(Mode.Trait.PIECES)
            .noticed("It blows whenever there is pressure")
            .inspected(BENCH_CRACK));
    return modes;
  }
}
