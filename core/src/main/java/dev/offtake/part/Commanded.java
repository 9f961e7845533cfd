package dev.offtake.part;

/** A valve that switches, trips and electrical power can move. */
interface Commanded extends Valve {
  /** What logic makes of it. */
  Control command();

  /**
   * What it does when its electrical power is gone: {@code shuts}, {@code opens}, {@code stays}.
   */
  String withoutPower();

  /** The same valve obeying another command. */
  Part obeying(Control other);
}
