package dev.offtake.desk.drawing;

/**
 * One end of a leg: the pipe between a point and a part.
 *
 * @param point number of the point's box among the boxes
 * @param part number of the part's box among the boxes
 * @param number of the part in the system
 * @param leg number of the leg in the part
 * @param outOf whether the leg leaves the point, else it ends there
 * @param port where it meets the part
 */
record Wire(int point, int part, int number, int leg, boolean outOf, Port port) {
  /** Where a pipe meets a part. */
  enum Port {
    /** Where the first leg comes in. */
    BELOW,
    /** Where the first leg goes out. */
    ABOVE,
    /** Where another leg comes in, at the side away from the words. */
    SIDE_IN,
    /** Where another leg goes out. */
    SIDE_OUT,
    /** The left end of a part that lies across. */
    LEFT,
    /** The right end of a part that lies across. */
    RIGHT
  }

  /** Whether the pipe comes up from the point into the part. */
  boolean upwards() {
    return port != Port.ABOVE && port != Port.SIDE_OUT;
  }
}
