package dev.offtake.network;

import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Wiring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Gives numbers to points, variables, parameters and controls while the elements of a network are
 * made.
 *
 * <p>Inner points come first and own the variables 2i (ln p) and 2i + 1 (T); boundary points and
 * sensed pressures follow in the order in which parts ask for them.
 */
final class Layout {
  /** A sensed static pressure that is a variable of its own. */
  record Sense(int variable, int point, int part, int leg, double bore) {}

  final Network network;
  final int inner;
  final int ambient;
  final List<Sense> senses = new ArrayList<>();
  final int[] firstParameter;
  final int[] firstControl;
  private final Map<String, List<SensePlace>> placesAt;
  private final Map<String, Integer> pointByName = new HashMap<>();
  private final List<Integer> lnPOf = new ArrayList<>();
  private int variables;

  Layout(Network network) {
    this.network = network;
    inner = network.points().size();
    for (int i = 0; i < inner; i++) {
      pointByName.put(network.points().get(i).name(), newPoint());
    }
    ambient = newPoint();
    pointByName.put(Leg.AMBIENT, ambient);
    placesAt = placesAt(network);
    firstParameter = firsts(true);
    firstControl = firsts(false);
  }

  private int[] firsts(boolean parameters) {
    int[] firsts = new int[network.parts().size() + 1];
    for (int i = 0; i < network.parts().size(); i++) {
      Part part = network.parts().get(i);
      firsts[i + 1] = firsts[i] + (parameters ? part.parameters().size() : part.controls().size());
    }
    return firsts;
  }

  private int newPoint() {
    lnPOf.add(variables);
    variables += 2;
    return lnPOf.size() - 1;
  }

  int points() {
    return lnPOf.size();
  }

  int variables() {
    return variables;
  }

  int lnP(int point) {
    return lnPOf.get(point);
  }

  /** Column of each variable in the Newton system, or −1 for what is given from outside. */
  int[] columns() {
    int[] columns = new int[variables];
    Arrays.fill(columns, -1);
    for (int v = 0; v < 2 * inner; v++) {
      columns[v] = v;
    }
    for (int s = 0; s < senses.size(); s++) {
      columns[senses.get(s).variable()] = 2 * inner + s;
    }
    return columns;
  }

  Wiring wiringOf(int part) {
    return new PartWiring(part);
  }

  /**
   * The bore at which a sense line at a point sits, or null when no part at the point states one.
   */
  @Nullable SensePlace placeOf(String point, String asking) {
    @Nullable SensePlace found = null;
    int rank = Integer.MAX_VALUE;
    for (SensePlace place : placesAt.getOrDefault(point, List.of())) {
      Part part = network.parts().get(place.part());
      int r = rank(part, part.legs().get(place.leg()), point, asking);
      if (r < rank) {
        rank = r;
        found = place;
      }
    }
    return found;
  }

  /** Every end of a leg with a bore, by its point, so that no search goes through all parts. */
  private static Map<String, List<SensePlace>> placesAt(Network network) {
    Map<String, List<SensePlace>> places = new HashMap<>();
    for (int p = 0; p < network.parts().size(); p++) {
      List<Leg> legs = network.parts().get(p).legs();
      for (int l = 0; l < legs.size(); l++) {
        SensePlace place = new SensePlace(p, l, legs.get(l).bore());
        for (String end : List.of(legs.get(l).from(), legs.get(l).to())) {
          places.computeIfAbsent(end, name -> new ArrayList<>()).add(place);
        }
      }
    }
    return places;
  }

  /** Own bore first, then the part that feeds the point, then any part that leaves it. */
  private static int rank(Part part, Leg leg, String point, String asking) {
    boolean arrives = leg.to().equals(point);
    boolean leaves = leg.from().equals(point);
    if (!(leg.bore() > 0) || !(arrives || leaves)) {
      return Integer.MAX_VALUE;
    }
    if (part.name().equals(asking)) {
      return 0;
    }
    return arrives ? 1 : 2;
  }

  private final class PartWiring implements Wiring {
    private final int part;

    PartWiring(int part) {
      this.part = part;
    }

    @Override
    public int point(String name) {
      Integer id = pointByName.get(name);
      if (id == null) {
        throw new IllegalArgumentException("no point named " + name);
      }
      return id;
    }

    @Override
    public int ambient() {
      return ambient;
    }

    @Override
    public int source() {
      return newPoint();
    }

    @Override
    public int lnP(int point) {
      return Layout.this.lnP(point);
    }

    @Override
    public int t(int point) {
      return Layout.this.lnP(point) + 1;
    }

    @Override
    public int sensed(String point, String asking) {
      int id = point(point);
      SensePlace place = placeOf(point, asking);
      if (place == null) {
        return lnP(id);
      }
      for (Sense s : senses) {
        if (s.part() == place.part() && s.leg() == place.leg() && s.point() == id) {
          return s.variable();
        }
      }
      senses.add(new Sense(variables, id, place.part(), place.leg(), place.bore()));
      return variables++;
    }

    @Override
    public int parameters() {
      return firstParameter[part];
    }

    @Override
    public int controls() {
      return firstControl[part];
    }

    @Override
    public <P extends Part> List<Attached<P>> attached(String name, Class<P> type) {
      List<Attached<P>> found = new ArrayList<>();
      for (int i = 0; i < network.parts().size(); i++) {
        Part other = network.parts().get(i);
        if (type.isInstance(other) && other.attachedTo().equals(name)) {
          found.add(new Attached<>(type.cast(other), firstParameter[i], firstControl[i]));
        }
      }
      return found;
    }
  }
}
