package dev.offtake.desk.drawing;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What the page's script needs to know of a picture, as JSON. */
final class Index {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private Index() {}

  /** The index of a picture. */
  static ObjectNode of(Placed placed, List<Piece> pieces) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("width", Num.round(placed.width())).put("height", Num.round(placed.height()));
    ArrayNode places = root.putArray("places");
    List<Box> boxes = placed.plan().boxes();
    for (int i = 0; i < boxes.size(); i++) {
      place(places.addObject(), placed, i);
    }
    ArrayNode marks = root.putArray("marks");
    boxes.forEach(box -> box.marks().forEach(mark -> mark(marks, mark, box.name())));
    placed.plan().loose().forEach(mark -> mark(marks, mark, ""));
    ArrayNode list = root.putArray("pieces");
    for (Piece piece : pieces) {
      piece(list.addObject(), placed.plan(), piece);
    }
    ArrayNode joins = root.putArray("joins");
    for (Wire wire : placed.plan().wires()) {
      joins.addArray().add(wire.point()).add(wire.part());
    }
    return root;
  }

  private static void place(ObjectNode node, Placed placed, int i) {
    Box box = placed.plan().boxes().get(i);
    node.put("id", box.point() ? Places.point(box.number()) : Places.part(box.number(), 0));
    node.put(box.point() ? "point" : "part", box.number());
    node.put("name", box.name()).put("side", box.side());
    node.put("x", Num.round(placed.axis(i))).put("y", Num.round(placed.middle(i)));
    node.putArray("box")
        .add(Num.round(placed.x()[i]))
        .add(Num.round(placed.y()[i]))
        .add(Num.round(box.width()))
        .add(Num.round(box.height()));
    node.put("words", box.beside() ? box.wordsLeft() ? "left" : "right" : "above");
    node.put("room", Num.round(box.words() - Box.GAP));
  }

  private static void mark(ArrayNode marks, Mark mark, String host) {
    marks
        .addObject()
        .put("id", Places.part(mark.part(), mark.needle()))
        .put("part", mark.part())
        .put("needle", mark.needle())
        .put("label", mark.label())
        .put("host", host);
  }

  /** Legs of a piece: number of the part, of the leg, and 1 where the leg leaves the point. */
  private static void piece(ObjectNode node, Plan plan, Piece piece) {
    node.put("point", plan.boxes().get(piece.point()).number()).put("before", piece.before());
    ArrayNode legs = node.putArray("legs");
    for (int number : piece.wires()) {
      Wire wire = plan.wires().get(number);
      legs.addArray().add(wire.number()).add(wire.leg()).add(wire.outOf() ? 1 : -1);
    }
  }
}
