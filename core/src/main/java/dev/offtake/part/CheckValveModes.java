package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Ways in which a {@link CheckValve} can fail; what is noticed is common practice, no source. */
final class CheckValveModes {
  private static final String UNIT = "check valve";

  private static final Inspection BORESCOPE =
      new Inspection(
          "Look at flapper, hinge and seat through the nearest port",
          Access.COWLS,
          20,
          "borescope, light");

  private CheckValveModes() {}

  static List<Mode> of(ValveBody body) {
    List<Mode> modes = new ArrayList<>();
    modes.add(
        Mode.named("flapper missing", UNIT, "The flapper has broken off: nothing shuts any more")
            .puts("stuck at", 1)
            .perMillionHours(1)
            .is(Mode.Trait.PIECES)
            .noticed("A bang or a rattle, once; air rushing back at low power")
            .inspected(BORESCOPE));
    modes.add(
        Mode.named(
                "half the flapper lost",
                UNIT,
                "One half of a split flapper has broken off: half of the bore stays open")
            .moves(BodyModes.leakName(body), (healthy, extent) -> half(body))
            .perMillionHours(2)
            .is(Mode.Trait.PIECES)
            .noticed("A rattle, once; air rushing back at low power")
            .inspected(BORESCOPE));
    hinge(body, modes);
    modes.add(
        Mode.named("fitted backwards", UNIT, "It was fitted the wrong way round after a removal")
            .puts("fitted", -1)
            .perMillionHours(0.2)
            .inspected(Inspection.look("Compare the arrow on it with the flow", Access.COWLS, 5)));
    modes.addAll(BodyModes.of(body, UNIT));
    return modes;
  }

  private static void hinge(ValveBody body, List<Mode> modes) {
    modes.add(
        Mode.named("hinge worn", UNIT, "The hinge has play: it flutters and seats askew")
            .extent(new Extent("share open when shut", Dimension.SHARE, 0.005, 0.02, 0.15))
            .moves(BodyModes.leakName(body), (healthy, share) -> healthy + share * area(body))
            .puts("slowness", share -> 0.3)
            .perMillionHours(20)
            .noticed("Chatter or buzz as the stages hand over")
            .inspected(BORESCOPE));
    modes.add(
        Mode.named("hinge corroded", UNIT, "Its hinge is stiff: it takes more to open it")
            .extent(new Extent("more to open it", Dimension.PRESSURE_DIFFERENCE, 1e3, 1e4, 1e5))
            .moves("cracks at", (healthy, more) -> healthy + more)
            .perMillionHours(5)
            .inspected(BORESCOPE));
  }

  private static double area(ValveBody body) {
    return body.parameters().get(ValveBody.AREA).value();
  }

  private static double half(ValveBody body) {
    return 0.5 * area(body);
  }
}
