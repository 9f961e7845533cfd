package dev.offtake.part;

import java.util.List;

/** What a part asks of the network while its {@link Element} is made. Not used after that. */
public interface Wiring {
  /**
   * The identifier of a point.
   *
   * @param name full name, or {@code ambient} for the air outside
   */
  int point(String name);

  /** The boundary point that is the air outside. */
  int ambient();

  /**
   * Makes a boundary point of the part's own, such as the stage behind a tap. The part sets its
   * pressure and temperature in {@link Element#boundary}.
   */
  int source();

  /** The variable that is ln(p/1 bar) of a point. */
  int lnP(int point);

  /** The variable that is the temperature of a point. */
  int t(int point);

  /**
   * The variable that is ln(p/1 bar) of the <em>static</em> pressure that a sense line feels at a
   * point.
   *
   * @param point full name of the point
   * @param part name of the part that asks; where it ends at the point, its own bore and flow count
   */
  int sensed(String point, String part);

  /** Position of the part's first parameter. */
  int parameters();

  /** Position of the part's first control. */
  int controls();

  /**
   * The parts of one type that are attached to a part, such as the thermostats of a regulator.
   *
   * @param name of the part that they are attached to
   * @param type of the attached parts
   */
  <P extends Part> List<Attached<P>> attached(String name, Class<P> type);

  /**
   * A part that is attached to another.
   *
   * @param part the attached part
   * @param parameters position of its first parameter
   * @param controls position of its first control
   */
  record Attached<P extends Part>(P part, int parameters, int controls) {}
}
