package dev.offtake.measure.cases;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;

/**
 * A run: two to four stops at two powers or more, and six to ten readings.
 *
 * @param occasions in the order of the run
 */
record Schedule(List<Occasion> occasions) {
  /** How often a stop is chosen beside the others. */
  private static final Map<Stop, Integer> WEIGHTS = weights();

  private static final int FEWEST = 6;
  private static final int MOST = 10;
  private static final int MOST_STOPS = 4;
  private static final double IDLE = 0.85;
  private static final double CREW = 0.35;

  /** Keeps its list. */
  Schedule {
    occasions = List.copyOf(occasions);
  }

  private static Map<Stop, Integer> weights() {
    Map<Stop, Integer> weights = new EnumMap<>(Stop.class);
    for (Stop stop : Stop.values()) {
      weights.put(stop, 2);
    }
    weights.put(Stop.IDLE, 6);
    weights.put(Stop.TAKE_OFF, 10);
    weights.put(Stop.CRUISE, 8);
    weights.put(Stop.DESCENT, 6);
    weights.put(Stop.TAKE_OFF_PACKS_OFF, 1);
    weights.put(Stop.IDLE_AUXILIARY, 1);
    weights.put(Stop.IDLE_GROUND_SUPPLY, 1);
    return weights;
  }

  /** Draws one. */
  static Schedule draw(RandomGenerator chance) {
    Set<Stop> stops = stops(chance);
    int wanted = FEWEST + chance.nextInt(MOST - FEWEST + 1);
    List<Item> extras = extras();
    List<Occasion> occasions = new ArrayList<>();
    int count = 0;
    for (Stop stop : stops) {
      boolean crew = !stop.power().ground() && chance.nextDouble() < CREW;
      occasions.add(new Occasion(stop, crew, needles()));
      count += 2;
    }
    for (int tries = 0; count < wanted && tries < 100; tries++) {
      int at = chance.nextInt(occasions.size());
      Occasion occasion = occasions.get(at);
      Item item = extras.get(chance.nextInt(extras.size()));
      if (possible(item, occasion)) {
        List<Item> items = new ArrayList<>(occasion.items());
        items.add(item);
        occasions.set(at, new Occasion(occasion.stop(), occasion.crew(), items));
        count++;
      }
    }
    return new Schedule(occasions);
  }

  /** Distinct stops in the order of the run. */
  private static Set<Stop> stops(RandomGenerator chance) {
    Set<Stop> stops = EnumSet.noneOf(Stop.class);
    int wanted = 2 + chance.nextInt(MOST_STOPS - 1);
    if (chance.nextDouble() < IDLE) {
      stops.add(Stop.IDLE);
    }
    while (stops.size() < wanted || powers(stops) < 2) {
      if (stops.size() == MOST_STOPS) {
        stops.clear();
      }
      stops.add(weighted(chance));
    }
    return stops;
  }

  private static Stop weighted(RandomGenerator chance) {
    int left = chance.nextInt(WEIGHTS.values().stream().mapToInt(w -> w).sum());
    for (Map.Entry<Stop, Integer> entry : WEIGHTS.entrySet()) {
      left -= entry.getValue();
      if (left < 0) {
        return entry.getKey();
      }
    }
    throw new IllegalStateException("no stop");
  }

  private static long powers(Set<Stop> stops) {
    return stops.stream().map(Stop::power).distinct().count();
  }

  private static List<Item> needles() {
    return List.of(new Item(Item.Kind.DUCT, Side.LEFT), new Item(Item.Kind.DUCT, Side.RIGHT));
  }

  private static List<Item> extras() {
    List<Item> items = new ArrayList<>();
    for (Item.Kind kind : Item.Kind.values()) {
      if (kind == Item.Kind.POSITION) {
        items.add(new Item(kind, Side.LEFT));
      } else if (kind != Item.Kind.DUCT) {
        items.add(new Item(kind, Side.LEFT));
        items.add(new Item(kind, Side.RIGHT));
      }
    }
    return items;
  }

  /** Nobody stands at a test port in flight. */
  private static boolean possible(Item item, Occasion occasion) {
    boolean reached = item.kind() != Item.Kind.INTERSTAGE || occasion.stop().power().ground();
    return reached && !occasion.items().contains(item);
  }
}
