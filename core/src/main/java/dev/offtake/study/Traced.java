package dev.offtake.study;

import java.util.List;

/**
 * A curve with the states that it was read from. Belongs to one thread, as it can be asked for more
 * states.
 */
public final class Traced {
  private final Curve curve;
  private final Walk walk;
  private final List<Step> up;

  Traced(Curve curve, Walk walk, List<Step> up) {
    this.curve = curve;
    this.walk = walk;
    this.up = List.copyOf(up);
  }

  /** The curve. */
  public Curve curve() {
    return curve;
  }

  /** Goes on along it. */
  Walk walk() {
    return walk;
  }

  /** States of the way up, edges of stretches without an answer among them. */
  List<Step> up() {
    return up;
  }
}
