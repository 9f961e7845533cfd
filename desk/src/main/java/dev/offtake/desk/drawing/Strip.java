package dev.offtake.desk.drawing;

/**
 * Something that takes room from left to right over a range of heights: a box or an upright pipe.
 *
 * @param block number of the block that it moves with
 * @param left edge, px, seen from the block
 * @param right edge, px, seen from the block
 * @param top upper end, px
 * @param bottom lower end, px
 * @param pipe number of the point whose pipe it is; −1 for a box
 */
record Strip(int block, double left, double right, double top, double bottom, int pipe) {
  private static final double BOXES = 12;
  private static final double BOX_AND_PIPE = 13;
  private static final double PIPES = 20;
  private static final double ABOVE = 7;

  /** Least distance to another, px. */
  double apart(Strip other) {
    if (pipe < 0 && other.pipe < 0) {
      return BOXES;
    }
    return pipe < 0 || other.pipe < 0 ? BOX_AND_PIPE : PIPES;
  }

  /** Whether the two would meet if one were moved past the other. */
  boolean level(Strip other) {
    double near = pipe >= 0 && pipe == other.pipe ? 0 : ABOVE;
    return top < other.bottom + near && other.top < bottom + near;
  }
}
