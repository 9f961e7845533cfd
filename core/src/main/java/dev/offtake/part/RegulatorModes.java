package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Ways in which a {@link Regulator} can fail, by removable unit.
 *
 * <p>Rates are orders of magnitude, assumptions; what is noticed and how it is looked for is common
 * practice, no source.
 */
final class RegulatorModes {
  private static final String HEAD = "control head";
  private static final String SENSE = "sense line";
  private static final String SERVO = "servo line";
  private static final String BODY = "valve body";

  private static final double PSI = 6894.757293168;

  /** Pressure of a column of water for each metre, Pa/m: 1000 kg/m³ times standard gravity. */
  private static final double WATER = 9806.65;

  private static final Inspection BENCH_SET =
      new Inspection(
          "Run it on the bench and read the pressure that it holds: outside the band of its manual",
          Access.BENCH,
          45,
          "flow bench, gauge in calibration");

  private static final Inspection SENSE_LEAK =
      new Inspection(
          "Disconnect the line at the head, pressurise it low and go along it with leak fluid",
          Access.COWLS,
          20,
          "shop air with regulator, leak fluid");

  private static final Inspection SENSE_BLOW =
      new Inspection(
          "Disconnect the line at both ends and blow through it: little or nothing comes out",
          Access.COWLS,
          20,
          "shop air with regulator");

  private static final Inspection SERVO_LEAK =
      new Inspection(
          "Pressurise the servo line low and go along it with leak fluid; watch for movement",
          Access.COWLS,
          20,
          "shop air with regulator, leak fluid");

  private static final Inspection PLATE =
      Inspection.look(
          "Compare the number on the head's plate with the parts list", Access.COWLS, 5);

  private static final Inspection VENT =
      Inspection.look(
          "Look at the head's vent: ice, mud, an insect's nest, paint or tape", Access.COWLS, 5);

  private RegulatorModes() {}

  static List<Mode> of(Regulator valve) {
    List<Mode> modes = new ArrayList<>(BodyModes.of(valve.body(), BODY));
    modes.add(BodyModes.jerks(BODY));
    head(valve, modes);
    vent(valve, modes);
    senseLine(valve, modes);
    crossing(modes);
    muscle(valve, modes);
    modes.addAll(CommandModes.of(valve, "solenoid", Command.WIDE));
    return modes;
  }

  private static void head(Regulator valve, List<Mode> modes) {
    double set = gaugeSet(valve);
    Extent off =
        new Extent("how far off", Dimension.PRESSURE_DIFFERENCE, 0.02 * set, 0.2 * set, 0.8 * set);
    String drift = "Its spring has settled or its adjustment has moved: it holds too ";
    modes.add(up("set drifted high", drift + "much", off).perMillionHours(20).inspected(BENCH_SET));
    modes.add(
        down("set drifted low", drift + "little", off).perMillionHours(20).inspected(BENCH_SET));
    springs(off, modes);
    modes.add(
        Mode.named("droop widened", HEAD, "Wear or dirt: it needs a larger error for its stroke")
            .extent(new Extent("times wider", Dimension.NUMBER, 1.5, 3, 10))
            .moves("droop", (healthy, times) -> healthy * times)
            .perMillionHours(10)
            .inspected(BENCH_SET));
    modes.add(
        Mode.named(
                "head diaphragm leaking",
                HEAD,
                "The head's diaphragm has a hole: what it senses bleeds off, so it holds too much")
            .extent(new Extent("share lost", Dimension.SHARE, 0.02, 0.2, 0.95))
            .puts("sense line loss", share -> share)
            .perMillionHours(5)
            .noticed("Hissing at the head's vent")
            .inspected(BENCH_SET));
  }

  private static void springs(Extent off, List<Mode> modes) {
    String spring = "A head of another part number, with a ";
    modes.add(
        up("too strong a spring fitted", spring + "stronger spring, is fitted", off)
            .perMillionHours(0.5)
            .is(Mode.Trait.COMMON)
            .inspected(PLATE));
    modes.add(
        down("too weak a spring fitted", spring + "weaker spring, is fitted", off)
            .perMillionHours(0.5)
            .is(Mode.Trait.COMMON)
            .inspected(PLATE));
    modes.add(
        Mode.named("set spring broken", HEAD, "Its set spring has broken: it holds nothing")
            .puts("set", 0)
            .perMillionHours(1)
            .inspected(BENCH_SET));
  }

  private static Mode up(String name, String means, Extent off) {
    return Mode.named(name, HEAD, means).extent(off).moves("set", (healthy, by) -> healthy + by);
  }

  private static Mode down(String name, String means, Extent off) {
    return Mode.named(name, HEAD, means).extent(off).moves("set", (healthy, by) -> healthy - by);
  }

  /** What the set counts from. */
  private static void vent(Regulator valve, List<Mode> modes) {
    if (valve.absolute()) {
      modes.add(
          Mode.named(
                  "capsule punctured",
                  HEAD,
                  "Its evacuated capsule has filled: its set counts from the air outside")
              .puts("vent open", 1)
              .perMillionHours(2)
              .inspected(BENCH_SET));
      return;
    }
    double standard = RegulatorKind.STANDARD_P;
    modes.add(
        Mode.named(
                "vent blocked",
                HEAD,
                "Its vent is shut with the air of the ground behind it: it holds too much in height")
            .extent(
                new Extent(
                    "trapped",
                    Dimension.ABSOLUTE_PRESSURE,
                    0.7 * standard,
                    standard,
                    1.05 * standard))
            .puts("vent open", 0)
            .puts("vent holds", trapped -> trapped)
            .perMillionHours(2)
            .is(Mode.Trait.COMMON)
            .inspected(VENT));
  }

  private static void senseLine(Regulator valve, List<Mode> modes) {
    double set = gaugeSet(valve);
    modes.add(
        Mode.named("sense line leaking", SENSE, "It feels less than there is, so it holds too much")
            .extent(new Extent("share lost", Dimension.SHARE, 0.02, 0.2, 0.95))
            .puts("sense line loss", share -> share)
            .perMillionHours(20)
            .noticed("Hissing at a small fitting")
            .inspected(SENSE_LEAK));
    modes.add(
        blocked("sense line blocked", "Dirt shuts the line: it feels what was trapped as it shut")
            .extent(new Extent("trapped", Dimension.GAUGE_PRESSURE, 0, 0.6 * set, 2 * set))
            .puts("sense line holds", trapped -> RegulatorKind.STANDARD_P + trapped)
            .perMillionHours(5)
            .inspected(SENSE_BLOW));
    modes.add(
        Mode.named(
                "water in the sense line",
                SENSE,
                "Water stands above the head in a low loop: it feels its height more, and late")
            .extent(new Extent("height of water", Dimension.LENGTH, 0.02, 0.3, 1))
            .puts("sense line holds", height -> WATER * height)
            .puts("sense line slowness", height -> 10)
            .perMillionHours(10)
            .is(Mode.Trait.COMMON)
            .inspected(SENSE_BLOW));
    modes.add(
        blocked(
                "ice in the sense line",
                "Water froze in it while there was no pressure: it feels nothing and opens wide")
            .puts("sense line holds", RegulatorKind.STANDARD_P)
            .perMillionHours(2)
            .is(Mode.Trait.COMMON)
            .noticed("Comes in the cold after rain or a wash, and goes as the engine bay warms")
            .inspected(SENSE_BLOW));
  }

  /** Fitted the wrong way round after work on both sides. */
  private static void crossing(List<Mode> modes) {
    modes.add(
        Mode.named(
                "sense lines crossed",
                SENSE,
                "Its line and that of the other side are joined the wrong way round")
            .rebuilds(RegulatorModes::crossed)
            .perMillionHours(0.2)
            .inspected(
                Inspection.look("Follow both lines from head to pick-up", Access.COWLS, 15)));
  }

  private static Mode blocked(String name, String means) {
    return Mode.named(name, SENSE, means).puts("sense line open", 0);
  }

  private static List<Part> crossed(Part part, @Nullable Part twin) {
    return part instanceof Regulator one && twin instanceof Regulator other
        ? List.of(one.holding(other.holds()), other.holding(one.holds()))
        : List.of();
  }

  private static void muscle(Regulator valve, List<Mode> modes) {
    String does = valve.opensWithoutMuscle() ? "opens" : "shuts";
    String loss = valve.needsMuscle() ? "servo line loss" : "muscle share";
    modes.add(
        Mode.named("servo line leaking", SERVO, "Its muscle bleeds off before it arrives")
            .extent(new Extent("share lost", Dimension.SHARE, 0.05, 0.6, 0.95))
            .puts(loss, share -> valve.needsMuscle() ? share : 1 - share)
            .perMillionHours(20)
            .noticed("Hissing at a small fitting")
            .inspected(SERVO_LEAK));
    modes.add(
        Mode.named(
                "muscle lost", SERVO, "Its servo line is off or shut: its spring " + does + " it")
            .puts("muscle share", 0)
            .perMillionHours(5)
            .inspected(SERVO_LEAK));
    modes.add(
        Mode.named(
                "actuator diaphragm leaking",
                BODY,
                "Its diaphragm or seal has a hole: it makes only a part of its stroke")
            .extent(new Extent("share lost", Dimension.SHARE, 0.02, 0.5, 0.95))
            .puts("muscle share", share -> 1 - share)
            .perMillionHours(10)
            .noticed("Hissing at the actuator")
            .inspected(SERVO_LEAK));
  }

  /** Its set above the air of a standard day at sea level, Pa; at least 1 psi. */
  private static double gaugeSet(Regulator valve) {
    double set = valve.body().parameters().get(Regulator.SET).value();
    return Math.max(PSI, valve.absolute() ? set - RegulatorKind.STANDARD_P : set);
  }
}
