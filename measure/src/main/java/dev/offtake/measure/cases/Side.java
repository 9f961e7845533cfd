package dev.offtake.measure.cases;

import java.util.Locale;

/** One of the two sides of the demo. */
enum Side {
  /** Left. */
  LEFT,
  /** Right. */
  RIGHT;

  /** The full name of a part of this side. */
  String of(String part) {
    return word() + " " + part;
  }

  /** The word in front of names. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The mark on the needle of the duct gauge. */
  String mark() {
    return this == LEFT ? "L" : "R";
  }

  /** The other one. */
  Side other() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /** Picks what belongs to this side. */
  <T> T pick(T left, T right) {
    return this == LEFT ? left : right;
  }

  /** Picks the number that belongs to this side. */
  double pick(double left, double right) {
    return this == LEFT ? left : right;
  }

  /** Picks the whole number that belongs to this side. */
  int pick(int left, int right) {
    return this == LEFT ? left : right;
  }

  /** Picks the word that belongs to this side. */
  boolean pick(boolean left, boolean right) {
    return this == LEFT ? left : right;
  }
}
