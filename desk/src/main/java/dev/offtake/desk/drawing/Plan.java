package dev.offtake.desk.drawing;

import java.util.List;

/**
 * What is drawn, before anything has a place.
 *
 * @param title of the system
 * @param partNames full names of all parts of the system
 * @param boxes points first, in the order of the network, then parts in the order of the file
 * @param wires pipes between points and parts
 * @param loose marks that watch nothing that is drawn
 */
record Plan(
    String title, List<String> partNames, List<Box> boxes, List<Wire> wires, List<Mark> loose) {
  /** Keeps its lists. */
  Plan {
    partNames = List.copyOf(partNames);
    boxes = List.copyOf(boxes);
    wires = List.copyOf(wires);
    loose = List.copyOf(loose);
  }

  /**
   * The same with every box as it would stand at the left, so that equal sides are laid out alike.
   */
  Plan leftwards() {
    List<Box> left = boxes.stream().map(box -> box.in(Box.Column.LEFT)).toList();
    return new Plan(title, partNames, left, wires, loose);
  }
}
