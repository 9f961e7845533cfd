package dev.offtake.part;

import dev.offtake.flow.NozzleLaw;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import java.util.List;

/**
 * The kind <em>leak</em>: a hole, crack or loose clamp that blows to the air outside or into a
 * zone.
 */
public final class Leak {
  /** Largest hole that is looked for, m² (20 in²): about a whole 5 in duct; an assumption. */
  private static final double LARGEST = 20 * 0.0254 * 0.0254;

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "leak",
          "A place where air can escape: a hole, a crack, a loose clamp. Healthy: no area.",
          "leak",
          List.of(
              Key.of("at", Form.POINT, "duct", "The point that leaks.").must(),
              Key.quantity("area", Dimension.AREA, "0..0.05 in2", "Area of the hole.")
                  .usually("0 in2"),
              Key.quantity(
                      "flow coefficient",
                      Dimension.NUMBER,
                      "0.6",
                      "Share of the hole that is effective.")
                  .usually("0.6"),
              Key.of(
                  "into",
                  Form.POINT,
                  "pylon zone",
                  "Where it blows; the air outside if not said.")),
          List.of("duct", DuctModes.CLAMP),
          Leak::build);

  private Leak() {}

  private static Part build(Facts facts) {
    Parameter area = area(facts.stated("area"));
    Leg leg = new Leg(facts.point("at"), facts.point("into"), Double.NaN, false);
    double effective = facts.si("flow coefficient");
    return new Through(
        facts.name(),
        KIND.name(),
        leg,
        List.of(area),
        List.of(),
        effective,
        NozzleLaw::new,
        Leak::doing,
        part -> HoleModes.joint(leg));
  }

  /**
   * A place that leaks only once something has failed; its area is an effective one.
   *
   * @param name full name
   * @param at point that leaks
   * @param into point into which it blows
   */
  static Part hole(String name, String at, String into) {
    return sound(name, at, into, Parameter.exactly("area", 0, 0, LARGEST, Dimension.AREA, "duct"));
  }

  /**
   * Joints and seals that no paper lists and that are never quite tight; nothing of it fails.
   *
   * @param name full name
   * @param at point that leaks, to the air outside
   * @param most largest effective area, m²; half of it is assumed
   */
  public static Part seep(String name, String at, double most) {
    double largest = Math.max(LARGEST, most);
    return sound(
        name,
        at,
        Leg.AMBIENT,
        new Parameter("area", most / 2, 0, most, 0, largest, Dimension.AREA, "duct"));
  }

  /** A leak that has no failures of its own. */
  private static Part sound(String name, String at, String into, Parameter area) {
    return new Through(
        name,
        KIND.name(),
        new Leg(at, into, Double.NaN, false),
        List.of(area),
        List.of(),
        1,
        NozzleLaw::new,
        Leak::doing,
        part -> List.of());
  }

  private static Parameter area(Stated stated) {
    double high = Math.max(stated.high(), stated.nominal());
    return new Parameter(
        "area",
        stated.nominal(),
        stated.low(),
        high,
        0,
        Math.max(LARGEST, high),
        Dimension.AREA,
        "duct");
  }

  private static Doing doing(View view, Through part) {
    if (view.parameter(0) == 0) {
      return new Doing("tight", "tight", "no hole is assumed at " + part.leg().from());
    }
    return Tell.resistance(view, part.leg(), "loses");
  }
}
