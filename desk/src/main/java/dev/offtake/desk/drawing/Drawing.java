package dev.offtake.desk.drawing;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.system.BleedSystem;
import java.util.List;

/**
 * The drawing of a system: a picture without any state, and what a script needs to show states on
 * it.
 *
 * @param svg a whole {@code svg} element; each point has the id {@code dr-point-N} and each part
 *     {@code dr-part-N}, N being its number in {@link dev.offtake.network.Network#points} and in
 *     {@link BleedSystem#parts}; the second and further needles of a gauge have {@code dr-part-N-K}
 * @param index places, marks, pieces of pipe with the legs whose air they carry, and joins
 */
public record Drawing(String svg, ObjectNode index) {
  /**
   * Draws a system; the same system gives the same drawing.
   *
   * @param system as read from its file
   */
  public static Drawing of(BleedSystem system) {
    Placed placed = Layout.of(Planner.of(system));
    List<Piece> pieces = PipeTree.pieces(placed);
    return new Drawing(Picture.of(placed, pieces), Index.of(placed, pieces));
  }
}
