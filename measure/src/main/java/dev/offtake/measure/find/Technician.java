package dev.offtake.measure.find;

import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Check;
import dev.offtake.cause.find.Finder;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.cause.find.Scene;
import dev.offtake.measure.cases.Case;
import dev.offtake.part.Access;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.LineUp;
import dev.offtake.system.Setting;
import dev.offtake.system.Standing;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Mends one case as Offtake advises: makes the best check that the plant can be run for, writes
 * down what it shows, asks again, and when no check is worth its minutes looks at units in the
 * order that it is given.
 */
final class Technician {
  /** A look finds what is there, and what is not there: as often as Offtake assumes. */
  private static final double HIT = 0.9;

  private static final double FALSE_ALARM = 0.05;

  private static final int PATIENCE = 8;

  private final BleedSystem system;
  private final Shelf shelf;
  private final Case one;
  private final Fault truth;
  private final SplittableRandom chance;
  private final Map<String, String> seen = new LinkedHashMap<>();
  private final Set<Access> open;
  private final StringBuilder readings;
  private int impossible;

  Technician(BleedSystem system, Shelf shelf, Case one) {
    this.system = system;
    this.shelf = shelf;
    this.one = one;
    truth = shelf.fault(one.truth());
    chance = new SplittableRandom(one.number() ^ 0x7465_6368L);
    readings = new StringBuilder(one.readings());
    open = EnumSet.of(Access.FLIGHT_DECK);
    if (one.readings().contains("at: ground idle") || one.readings().contains("at: take-off")) {
      open.add(Access.ENGINE_RUN);
    }
  }

  /**
   * What it took.
   *
   * @param fixed minutes in the fixed order
   * @param ordered minutes in the order that the first readings give
   * @param checked minutes with checks
   * @param checks how many
   * @param expected minutes that Offtake expected at the outset
   * @param impossible checks that the plant cannot be run for, and were passed over
   */
  record Repair(
      double fixed, double ordered, double checked, int checks, double expected, int impossible) {}

  Repair mend() {
    Bill bill = new Bill(open);
    Found found = find();
    double fixed = looking(new Bill(open), Optional.empty());
    double ordered = looking(new Bill(open), Optional.of(found));
    double expected =
        found.advice().offers().stream()
            .mapToDouble(Advice.Offer::finish)
            .min()
            .orElse(found.advice().without());
    int checks = 0;
    while (checks < PATIENCE && check(found.advice(), bill)) {
      checks++;
      found = find();
    }
    double checked = looking(bill, Optional.of(found));
    return new Repair(fixed, ordered, checked, checks, expected, impossible);
  }

  private Found find() {
    return find(Set.of());
  }

  /** Asks with what was read and seen, and with units that were looked at and are sound. */
  private Found find(Set<Shelf.Unit> sound) {
    Map<String, String> all = new LinkedHashMap<>(seen);
    sound.forEach(unit -> all.putIfAbsent(unit.part(), "sound"));
    StringBuilder text = new StringBuilder(readings);
    if (!all.isEmpty()) {
      text.append("seen:\n");
      all.forEach((part, verdict) -> text.append("  " + part + ": " + verdict + "\n"));
    }
    return Finder.find(
        system,
        ReadingsReader.readText("case.yaml", text.toString(), system).readings().orElseThrow(),
        Prior.of(Prior.Reason.SQUAWK),
        one.number(),
        share -> {});
  }

  /**
   * Looks at units until the broken one is found: in the order that is given; then, with what was
   * sound told, in the order that this gives; and what is left in the fixed one.
   */
  private double looking(Bill bill, Optional<Found> found) {
    Shelf.Unit broken = shelf.broken(one.truth());
    Set<Shelf.Unit> looked = new LinkedHashSet<>();
    Optional<Found> now = found;
    int before = -1;
    while (now.isPresent() && looked.size() > before) {
      before = looked.size();
      if (looking(bill, looked, order(now.get()), broken)) {
        return bill.minutes();
      }
      now = Optional.of(find(looked));
    }
    looking(bill, looked, shelf.fixed(), broken);
    return bill.minutes();
  }

  private List<Shelf.Unit> order(Found found) {
    return found.advice().order().stream()
        .map(unit -> shelf.unit(unit.part(), unit.unit()))
        .toList();
  }

  private static boolean looking(
      Bill bill, Set<Shelf.Unit> looked, List<Shelf.Unit> order, Shelf.Unit broken) {
    for (Shelf.Unit unit : order) {
      if (looked.add(unit)) {
        bill.look(unit);
        if (unit.equals(broken)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Makes the best check that can be made. */
  private boolean check(Advice advice, Bill bill) {
    for (Advice.Offer offer : advice.offers()) {
      boolean made =
          offer.check() instanceof Check.Look look
              ? look(look.fault())
              : run((Check.Run) offer.check());
      if (made) {
        bill.pay(offer.check().access(), offer.check().minutes());
        return true;
      }
      impossible++;
    }
    return false;
  }

  private boolean look(Fault fault) {
    String part = fault.part().name();
    if (seen.containsKey(part)) {
      return false;
    }
    boolean there =
        part.equals(truth.part().name())
            && fault.mode().inspection().equals(truth.mode().inspection());
    boolean finds = chance.nextDouble() < (there ? HIT : FALSE_ALARM);
    seen.put(part, finds ? (there ? truth.mode().name() : fault.mode().name()) : "sound");
    return true;
  }

  private boolean run(Check.Run run) {
    Scene scene = run.scene();
    Optional<String> occasion =
        one.aircraft().read(scene.power(), moved(scene), run.instrument().name(), chance);
    occasion.ifPresent(readings::append);
    return occasion.isPresent();
  }

  private Map<String, String> moved(Scene scene) {
    LineUp usual = Objects.requireNonNull(system.lineUps().get(LineUp.USUAL));
    Setting power = Objects.requireNonNull(system.settings().get(scene.power()));
    Map<String, String> standing = Standing.of(system, power, usual).positions();
    Map<String, String> moved = new TreeMap<>(scene.setup().positions());
    moved.entrySet().removeIf(entry -> entry.getValue().equals(standing.get(entry.getKey())));
    return moved;
  }
}
