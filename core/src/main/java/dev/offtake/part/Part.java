package dev.offtake.part;

import java.util.List;

/**
 * A part of a bleed-air system as the file describes it: immutable, healthy, ready to be put into a
 * network.
 *
 * <p>The numbers that may vary are {@link #parameters()}; what logic decides are {@link
 * #controls()}; the law itself is made for one network by {@link #element(Wiring)}.
 */
public interface Part {
  /** Full name, side included, such as {@code left mid check valve}. */
  String name();

  /** Name of the kind, such as {@code check valve}. */
  String kind();

  /** What the part is there for. */
  default Role role() {
    if (legs().isEmpty()) {
      return Role.WATCH;
    }
    return legs().stream().anyMatch(Leg::fromSource) ? Role.SOURCE : Role.PASSAGE;
  }

  /** Ways of air through the part, in the order of its branches. */
  List<Leg> legs();

  /** Numbers that may vary. */
  List<Parameter> parameters();

  /**
   * Highest pressure that a source of the part's own can give at the conditions, without flow.
   *
   * @param conditions speeds and air
   * @return Pa absolute; NaN for a part that has no source
   */
  default double mostPressure(Conditions conditions) {
    return Double.NaN;
  }

  /** Discrete inputs. */
  default List<Control> controls() {
    return List.of();
  }

  /** Names of what {@link Element#observe} tells. */
  default List<String> observables() {
    return List.of();
  }

  /** Full name of the part that this one is attached to and acts through, or an empty text. */
  default String attachedTo() {
    return "";
  }

  /** Full names of the points and parts that it watches, the one that counts most first. */
  default List<String> looksAt() {
    return List.of();
  }

  /** Ways in which it can fail, in the order in which they are listed to people. */
  default List<Mode> modes() {
    return List.of();
  }

  /**
   * Makes the part's law for a network.
   *
   * @param wiring the network under construction
   */
  Element element(Wiring wiring);

  /**
   * Tells whether the part stands in a position that a condition may name ({@code overheat trip is
   * tripped}).
   *
   * @param position one of the kind's {@link Kind#positions()}
   * @param view the solved state
   */
  default boolean is(String position, View view) {
    return false;
  }

  /**
   * Tells what the part's wires carry: whether the logic of other parts finds it in a position. The
   * same as {@link #is} for all but a light, whose bulb only a person sees.
   *
   * @param position word used in the condition
   * @param view the solved state
   */
  default boolean carries(String position, View view) {
    return is(position, view);
  }

  /**
   * Why a state must not be told as an answer: something that the state needs of this part is not
   * known. What is wrong and how to mend it, one sentence without a full stop and without the
   * part's name; empty when there is nothing to object to.
   *
   * @param view the solved state
   */
  default String refuses(View view) {
    return "";
  }

  /**
   * What the part is doing and why.
   *
   * @param view the solved state
   */
  Doing doing(View view);

  /** Volume of the air in it, m³, half of it at either end of its first leg; 0 where unknown. */
  default double airInside() {
    return 0;
  }
}
