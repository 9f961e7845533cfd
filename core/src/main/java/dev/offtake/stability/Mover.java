package dev.offtake.stability;

/**
 * A part whose opening follows the air, as it answers in one state.
 *
 * @param part number in the network
 * @param row slope of its opening by each variable of its branch
 * @param column slope of the residual by its opening
 */
record Mover(int part, double[] row, double[] column) {}
