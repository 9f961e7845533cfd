package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in which the body of any valve can fail.
 *
 * <p>Rates are orders of magnitude, assumptions; what is noticed and how it is looked for is common
 * practice, no source.
 */
final class BodyModes {
  private static final Inspection POINTER =
      Inspection.look(
          "Move it by hand through its stroke and watch its position mark: it binds or stays",
          Access.COWLS,
          10);

  private static final Inspection BENCH_LEAK =
      new Inspection(
          "Pressurise it shut and measure what passes: more than its manual allows",
          Access.BENCH,
          30,
          "flow bench, gauge in calibration");

  private static final Inspection SOAP =
      new Inspection(
          "Pressurise the duct low and cold and go round the flanges and the shaft with leak fluid",
          Access.COWLS,
          20,
          "shop air, leak fluid");

  private static final Inspection THROUGH =
      new Inspection(
          "Look through it from the nearest port or joint", Access.COWLS, 20, "borescope, light");

  private static final Inspection PLATE =
      Inspection.look(
          "Compare the number on its plate with the parts list of this engine", Access.COWLS, 5);

  private BodyModes() {}

  /**
   * Modes of a body.
   *
   * @param body whose modes they are
   * @param unit removable unit that is the body
   */
  static List<Mode> of(ValveBody body, String unit) {
    List<Mode> modes = new ArrayList<>();
    modes.add(
        Mode.named("stuck open", unit, "It stays wide open, whatever moves it")
            .puts("stuck at", 1)
            .perMillionHours(10)
            .inspected(POINTER));
    modes.add(
        Mode.named("stuck shut", unit, "It stays shut, whatever moves it")
            .puts("stuck at", 0)
            .perMillionHours(10)
            .inspected(POINTER));
    modes.add(
        Mode.named("stuck", unit, "It stays part open, whatever moves it")
            .extent(new Extent("share open", Dimension.SHARE, 0.02, 0.3, 0.98))
            .puts("stuck at", opening -> opening)
            .perMillionHours(10)
            .inspected(POINTER));
    modes.add(
        Mode.named("opens short", unit, "Under load it opens only part of its way")
            .extent(new Extent("share open", Dimension.SHARE, 0.02, 0.3, 0.95))
            .puts("most opening", opening -> opening)
            .perMillionHours(5)
            .inspected(POINTER));
    modes.add(
        Mode.named("slow", unit, "Friction or dirt: it follows, but late")
            .extent(new Extent("times slower", Dimension.NUMBER, 2, 5, 50))
            .puts("slowness", times -> times)
            .perMillionHours(10)
            .is(Mode.Trait.MOVING)
            .noticed("Pressure overshoots or lags while power moves")
            .inspected(POINTER));
    passage(body, unit, modes);
    return modes;
  }

  /**
   * Friction in a valve that something drives with less than all its force.
   *
   * @param unit removable unit that is the body
   */
  static Mode jerks(String unit) {
    return Mode.named("moves in jerks", unit, "Friction: it stays where it is, then jumps")
        .extent(new Extent("share of its stroke", Dimension.SHARE, 0.01, 0.05, 0.3))
        .puts("friction", share -> share)
        .perMillionHours(10)
        .is(Mode.Trait.MOVING)
        .noticed("Pressure stops short of the set, jumps, and comes to rest elsewhere each time")
        .inspected(POINTER);
  }

  /** What the body lets through, and where. */
  private static void passage(ValveBody body, String unit, List<Mode> modes) {
    modes.add(
        Mode.named("leaks through its seat", unit, "The seat or seal is worn: shut is not shut")
            .extent(leak(body, 0.002, 0.03, 0.3))
            .moves(leakName(body), (healthy, area) -> healthy + area)
            .perMillionHours(10)
            .inspected(BENCH_LEAK));
    modes.add(outward(body, unit));
    modes.add(
        Mode.named("partly blocked", unit, "Dirt or a foreign object stands in its way")
            .extent(new Extent("share of its area left", Dimension.SHARE, 0.02, 0.4, 0.95))
            .moves("effective area", (healthy, share) -> healthy * share)
            .perMillionHours(1)
            .inspected(THROUGH));
    modes.add(
        Mode.named("wrong part fitted", unit, "A valve of another part number, smaller, is fitted")
            .extent(new Extent("share of its area", Dimension.SHARE, 0.2, 0.6, 0.95))
            .moves("effective area", (healthy, share) -> healthy * share)
            .perMillionHours(0.5)
            .is(Mode.Trait.COMMON)
            .inspected(PLATE));
  }

  /** What the leak of this valve is called: a check valve leaks back. */
  static String leakName(ValveBody body) {
    return body.parameters().get(ValveBody.LEAK).name();
  }

  /** Area of a leak as shares of the effective area of the open valve. */
  private static Extent leak(ValveBody body, double least, double usual, double most) {
    double area = body.parameters().get(ValveBody.AREA).value();
    return new Extent("effective area", Dimension.AREA, least * area, usual * area, most * area);
  }

  private static Mode outward(ValveBody body, String unit) {
    String leak = " outward leak";
    return Mode.named("leaks outward", unit, "A flange, shaft seal or crack blows to the outside")
        .extent(leak(body, 0.002, 0.03, 0.3))
        .rebuilds((part, twin) -> List.of(hole(part.name() + leak, body.leg().from())))
        .shift(new Mode.Shift(leak, "area", (healthy, area) -> area))
        .perMillionHours(5)
        .noticed("Hissing, a hot smell or discoloured paint at the valve")
        .inspected(SOAP);
  }

  private static Part hole(String name, String at) {
    return Leak.hole(name, at, Leg.AMBIENT);
  }
}
