package dev.offtake.measure.find;

import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Ranked;
import dev.offtake.measure.cases.Case;
import dev.offtake.measure.cases.Truth;
import java.util.stream.Collectors;

/**
 * How well one case was told.
 *
 * @param place of the group that holds the truth among the groups that do not look like a sound
 *     system, 1 for the first; 0 when it is in none
 * @param group how many causes are in that group; 0 when it is in none
 * @param chance that was given to the truth
 * @param believed largest chance that was given to one cause, nothing and none included
 * @param likeliest that one, in words
 * @param right whether that one was the truth
 * @param sound chance of nothing wrong and of everything that looks like it
 * @param none chance that it is something else
 * @param near chance given to parts that a judge accepts
 */
record Verdict(
    int place,
    int group,
    double chance,
    double believed,
    String likeliest,
    boolean right,
    double sound,
    double none,
    double near) {

  static Verdict of(Case one, Found found) {
    Truth truth = one.truth();
    double sound = found.nothing();
    double chance = truth.kind() == Truth.Kind.HEALTHY ? found.nothing() : 0;
    double near = 0;
    double most = 0;
    String likeliest = "";
    boolean right = false;
    for (Ranked ranked : found.ranked()) {
      boolean is = is(ranked, truth);
      chance += is ? ranked.chance() : 0;
      near += near(ranked, truth) ? ranked.chance() : 0;
      if (ranked.chance() > most) {
        most = ranked.chance();
        right = is;
        likeliest = words(ranked);
      }
    }
    if (found.nothing() > most) {
      most = found.nothing();
      likeliest = "nothing";
      right = truth.kind() == Truth.Kind.HEALTHY;
    }
    if (found.none() > most) {
      most = found.none();
      likeliest = "none of these";
      right = truth.kind() == Truth.Kind.STRANGER;
    }
    int place = 0;
    int seen = 0;
    int size = 0;
    for (Found.Group group : found.groups()) {
      sound += group.asSound() ? group.chance() : 0;
      seen += group.asSound() ? 0 : 1;
      boolean holds = group.members().stream().anyMatch(m -> is(found.ranked().get(m), truth));
      if (holds && place == 0 && !group.asSound()) {
        place = seen;
        size = group.members().size();
      }
    }
    return new Verdict(place, size, chance, most, likeliest, right, sound, found.none(), near);
  }

  private static String words(Ranked ranked) {
    return ranked.cause().faults().stream()
        .map(fault -> fault.part().name() + " " + fault.mode().name())
        .collect(Collectors.joining(" and "));
  }

  private static boolean is(Ranked ranked, Truth truth) {
    return truth.kind() == Truth.Kind.LISTED
        && ranked.cause().faults().size() == 1
        && ranked.cause().faults().get(0).part().name().equals(truth.part())
        && ranked.cause().faults().get(0).mode().name().equals(truth.mode());
  }

  private static boolean near(Ranked ranked, Truth truth) {
    return ranked.cause().faults().stream()
        .anyMatch(fault -> truth.accepted().contains(fault.part().name()));
  }
}
