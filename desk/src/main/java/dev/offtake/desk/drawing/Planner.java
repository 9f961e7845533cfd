package dev.offtake.desk.drawing;

import dev.offtake.part.Kind;
import dev.offtake.part.Kinds;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Makes the {@link Plan} of a system. */
final class Planner {
  private final BleedSystem system;
  private final Zones zones;
  private final List<Box> boxes = new ArrayList<>();
  private final List<Wire> wires = new ArrayList<>();
  private final Map<String, Integer> byName = new HashMap<>();

  private Planner(BleedSystem system) {
    this.system = system;
    zones = Zones.of(system);
  }

  /** The plan of a system. */
  static Plan of(BleedSystem system) {
    Planner planner = new Planner(system);
    planner.points();
    planner.parts();
    List<Mark> loose = new MarkPlanner(system, planner.zones, planner.boxes, planner.byName).hang();
    List<String> names = system.parts().stream().map(Part::name).toList();
    return new Plan(system.title(), names, planner.boxes, planner.wires, loose);
  }

  private void points() {
    for (int i = 0; i < system.network().points().size(); i++) {
      String name = system.network().points().get(i).name();
      String symbol = zones.names().contains(name) ? Box.ZONE_SYMBOL : "";
      add(box(true, i, name, symbol, Box.Form.BESIDE, 0));
    }
  }

  private void parts() {
    for (int i = 0; i < system.parts().size(); i++) {
      Part part = system.parts().get(i);
      if (zones.hangs(part)) {
        leak(part.legs().get(0), i);
      } else if (!part.legs().isEmpty()) {
        Box.Form form = form(part);
        wire(boxes.size(), i, part.legs(), form == Box.Form.ACROSS);
        add(box(false, i, part.name(), symbol(part), form, part.legs().size() - 1));
      }
    }
  }

  private Box.Form form(Part part) {
    if (across(part)) {
      return Box.Form.ACROSS;
    }
    boolean goesOn = part.legs().size() > 1 || !part.legs().get(0).to().equals(Leg.AMBIENT);
    return goesOn ? Box.Form.BESIDE : Box.Form.TOP;
  }

  /** The pipe into a zone; the leak itself is a mark there. */
  private void leak(Leg leg, int number) {
    Integer from = byName.get(leg.from());
    Integer zone = byName.get(leg.to());
    if (from != null && zone != null) {
      wires.add(new Wire(from, zone, number, 0, true, Wire.Port.BELOW));
    }
  }

  private void add(Box box) {
    byName.put(box.name(), boxes.size());
    boxes.add(box);
  }

  /** Whether a part joins a point of the left to one of the right, with one leg. */
  private boolean across(Part part) {
    if (part.legs().size() != 1 || part.role() == Role.USER || !side(part.name()).isEmpty()) {
      return false;
    }
    Box.Column from = column(side(part.legs().get(0).from()));
    Box.Column to = column(side(part.legs().get(0).to()));
    return from != to && from != Box.Column.MIDDLE && to != Box.Column.MIDDLE;
  }

  private void wire(int box, int number, List<Leg> legs, boolean across) {
    for (int k = 0; k < legs.size(); k++) {
      Wire.Port in = k == 0 ? Wire.Port.BELOW : Wire.Port.SIDE_IN;
      Wire.Port out = k == 0 ? Wire.Port.ABOVE : Wire.Port.SIDE_OUT;
      if (across) {
        boolean rightwards = column(side(legs.get(k).from())) == Box.Column.LEFT;
        in = rightwards ? Wire.Port.LEFT : Wire.Port.RIGHT;
        out = rightwards ? Wire.Port.RIGHT : Wire.Port.LEFT;
      }
      Integer from = byName.get(legs.get(k).from());
      Integer to = byName.get(legs.get(k).to());
      if (from != null) {
        wires.add(new Wire(from, box, number, k, true, in));
      }
      if (to != null) {
        wires.add(new Wire(to, box, number, k, false, out));
      }
    }
  }

  private Box box(boolean point, int i, String name, String symbol, Box.Form form, int ins) {
    String side = side(name);
    Box.Column column = column(side);
    String label = label(name, side);
    double most = form == Box.Form.BESIDE ? Box.WRAP_BESIDE : Box.WRAP_ABOVE;
    List<String> lines = Face.wrap(label, Face.NAME, most);
    return new Box(point, i, name, side, column, lines, symbol, form, ins, List.of());
  }

  /** Name of the side that a full name begins with; empty for what lies between sides. */
  private String side(String name) {
    return side(system, name);
  }

  static String side(BleedSystem system, String name) {
    return system.sides().stream().filter(s -> name.startsWith(s + " ")).findFirst().orElse("");
  }

  /** The short name: on its own side nobody needs to be told the side. */
  static String label(String name, String side) {
    return side.isEmpty() ? name : name.substring(side.length() + 1);
  }

  private Box.Column column(String side) {
    int i = system.sides().indexOf(side);
    if (i < 0) {
      return Box.Column.MIDDLE;
    }
    return 2 * i < system.sides().size() ? Box.Column.LEFT : Box.Column.RIGHT;
  }

  static String symbol(Part part) {
    return Kinds.named(part.kind()).map(Kind::symbol).orElse("");
  }
}
