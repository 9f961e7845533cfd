package dev.offtake.measure.find;

import dev.offtake.measure.cases.ModeLine;
import dev.offtake.measure.cases.Truth;
import dev.offtake.part.Access;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Every removable unit that can have failed, and the best order of looking at them unread. */
final class Shelf {
  private final Map<String, Unit> byMode = new LinkedHashMap<>();
  private final Map<String, Fault> faults = new LinkedHashMap<>();
  private final List<Unit> fixed;

  /**
   * A removable unit.
   *
   * @param minutes of looking, without getting there
   */
  record Unit(String part, String unit, Access access, double minutes) {}

  /**
   * Looks at a system.
   *
   * @param modes that may fail, with their rates
   */
  Shelf(BleedSystem system, List<ModeLine> modes) {
    Map<String, Unit> units = new LinkedHashMap<>();
    for (Fault fault : Faults.all(system)) {
      String part = fault.part().name();
      Unit unit =
          units.computeIfAbsent(
              part + '/' + fault.mode().unit(),
              key ->
                  new Unit(
                      part,
                      fault.mode().unit(),
                      fault.mode().inspection().access(),
                      fault.mode().inspection().minutes()));
      byMode.put(key(part, fault.mode().name()), unit);
      faults.put(key(part, fault.mode().name()), fault);
    }
    Map<Unit, Double> rates = new LinkedHashMap<>();
    for (ModeLine mode : modes) {
      rates.merge(byMode.get(key(mode.part(), mode.mode())), mode.rate(), Double::sum);
    }
    fixed = order(rates);
  }

  private static String key(String part, String mode) {
    return part + '/' + mode;
  }

  /** The next one is always that of the largest chance over the minutes still to be paid. */
  private static List<Unit> order(Map<Unit, Double> rates) {
    Bill bill = new Bill(Set.of());
    List<Unit> left = new ArrayList<>(rates.keySet());
    List<Unit> order = new ArrayList<>();
    while (!left.isEmpty()) {
      Unit best = left.get(0);
      for (Unit unit : left) {
        if (rate(rates, unit) * bill.price(best) > rate(rates, best) * bill.price(unit)) {
          best = unit;
        }
      }
      left.remove(best);
      order.add(best);
      bill.look(best);
    }
    return order;
  }

  private static double rate(Map<Unit, Double> rates, Unit unit) {
    return rates.getOrDefault(unit, 0.0);
  }

  /** All that may have failed, the best order when nothing is known but how often each fails. */
  List<Unit> fixed() {
    return fixed;
  }

  /** The unit that has failed. */
  Unit broken(Truth truth) {
    return Objects.requireNonNull(byMode.get(key(truth.part(), truth.mode())));
  }

  /** What has failed. */
  Fault fault(Truth truth) {
    return Objects.requireNonNull(faults.get(key(truth.part(), truth.mode())));
  }

  /** The unit that an order of Offtake names. */
  Unit unit(String part, String unit) {
    return byMode.values().stream()
        .filter(one -> one.part().equals(part) && one.unit().equals(unit))
        .findFirst()
        .orElseThrow();
  }
}
