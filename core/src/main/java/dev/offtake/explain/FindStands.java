package dev.offtake.explain;

import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.part.Regulator;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.system.Setting;
import java.util.ArrayList;
import java.util.List;

/** What the answer of {@code find} stands on, in sentences. */
final class FindStands {
  private final Found found;
  private final Style style;

  FindStands(Found found, Style style) {
    this.found = found;
    this.style = style;
  }

  List<String> sentences() {
    List<String> says = new ArrayList<>();
    Prior prior = found.prior();
    says.add(
        FindWords.count(found.considered(), "failure")
            + " weighed, one at a time"
            + (found.pairs() ? " and in pairs" : "")
            + unsolved()
            + ".");
    says.add(
        "Why you look: "
            + prior.reason().words()
            + ", so that before any reading nothing is wrong in "
            + FindWords.chance(prior.healthy())
            + " of 100 cases (--because tells otherwise); the list misses the cause in "
            + FindWords.chance(prior.none())
            + " of 100.");
    says.add(
        "Failure rates and minutes are common practice unless your file says better; "
            + number(prior.evidentHours())
            + " hours since it was last good, "
            + number(prior.dormantHours())
            + " since a dormant function was proved.");
    if (prior.unheard() < 1) {
      says.add(
          "A failure that nobody would have noticed is the reason for looking "
              + Math.round(1 / prior.unheard())
              + " times less often than one that shows itself.");
    }
    says.add(
        "The model may be "
            + ErrorWords.of(found.system().modelError(), style)
            + " off"
            + ErrorWords.standing(found.system().modelError())
            + ".");
    corrected(says);
    boolean regulated = found.system().parts().stream().anyMatch(Regulator.class::isInstance);
    if (regulated && found.readings().recordings().isEmpty()) {
      says.add(
          "No duct is quite tight: behind each regulator joints let out "
              + area(Found.SEEP / 2)
              + " (up to "
              + area(Found.SEEP)
              + "), which no paper lists and which counts only where nothing takes air.");
    }
    if (!found.readings().recordings().isEmpty()) {
      says.add(
          "Of a recorded course the model has most wrong all along and a third of it anew at each"
              + " instant; the recorder's clock may be 0.25 s off the profile's; lags and strokes"
              + " of valves may differ by a factor of two from what is usual, friction by 3 %.");
    }
    return says;
  }

  private String area(double squareMetres) {
    return style.print(squareMetres, Dimension.AREA);
  }

  private static String number(double hours) {
    return Long.toString(Math.round(hours));
  }

  private String unsolved() {
    return found.unsolved() == 0
        ? ""
        : ", of which " + found.unsolved() + " have no answer and were left out";
  }

  private void corrected(List<String> says) {
    List<String> powers =
        found.scenes().stream()
            .map(scene -> found.system().settings().get(scene.power()))
            .filter(setting -> setting != null && setting.holds() == Setting.Holds.UNKNOWN)
            .map(setting -> setting.name())
            .distinct()
            .toList();
    if (!powers.isEmpty()) {
      String where = FindWords.list(powers, powers.size(), "and");
      says.add("Physical speed is taken as held at " + where + ": your file does not say.");
    }
  }
}
