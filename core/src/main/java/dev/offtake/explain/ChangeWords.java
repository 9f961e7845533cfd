package dev.offtake.explain;

import dev.offtake.study.Curve;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What happens at an event, in the words of the shop: {@code left and right mid check valve open}.
 */
public final class ChangeWords {
  private static final Map<String, String> NOW =
      Map.ofEntries(
          Map.entry("regulating", "begins to regulate"),
          Map.entry("controlling", "begins to control"),
          Map.entry("wide open", "is wide open"),
          Map.entry("shut by pressure", "shuts: pressure is above its set"),
          Map.entry("held shut in reverse", "is held shut from behind"),
          Map.entry("no muscle", "shuts for want of muscle"),
          Map.entry("short of muscle", "is short of muscle"),
          Map.entry("shut by command", "is shut by command"),
          Map.entry("opened by command", "is opened by command"),
          Map.entry("partly open", "begins to open"),
          Map.entry("open", "is wide open"),
          Map.entry("shut", "shuts"),
          Map.entry("relieving", "lifts"),
          Map.entry("not reseated", "is open and has not reseated"),
          Map.entry("tripped", "TRIPS"),
          Map.entry("normal", "resets"),
          Map.entry("on", "comes on"),
          Map.entry("off", "goes off"),
          Map.entry("starved", "GOES SHORT"),
          Map.entry("fed", "gets enough air"),
          Map.entry("low", "is under the pressure that it needs"),
          Map.entry("held up", "has the pressure that it needs"),
          Map.entry("gives", "begins to give air"),
          Map.entry("takes back", "takes air back into the engine"),
          Map.entry("turns", "turns"),
          Map.entry("overdrawn", "gives more than its table knows"),
          Map.entry("deadheaded", "is deadheaded"),
          Map.entry("over limit", "passes its limit"),
          Map.entry("passed", "IS PASSED"),
          Map.entry("trimming", "begins to trim"),
          Map.entry("at its most", "trims its most"),
          Map.entry("pegged", "is pegged"),
          Map.entry("reads", "is on its scale again"),
          Map.entry("shut, cold", "shuts, cold"),
          Map.entry("open, hot", "is wide open, hot"));

  private static final Map<String, String> FROM =
      Map.ofEntries(
          Map.entry("relieving>shut", "reseats"),
          Map.entry("not reseated>shut", "reseats"),
          Map.entry("shut>not reseated", "lifts, and stays open"),
          Map.entry("not reseated>relieving", "is again above its cracking pressure"),
          Map.entry("open>partly open", "begins to shut"),
          Map.entry("regulating>wide open", "no longer regulates, wide open"),
          Map.entry("trimming>idle", "no longer trims"),
          Map.entry("at its most>trimming", "trims less than its most"),
          Map.entry("over limit>gives", "is within its limit again"),
          Map.entry("passed>kept", "is kept again"));

  private static final String NO_LONGER = "no longer ";

  private ChangeWords() {}

  /** All changes of an event, one sentence without a full stop. */
  public static String of(Curve.Event event) {
    return of(event.changes());
  }

  /** Some changes, one sentence without a full stop. */
  public static String of(List<Curve.Change> changes) {
    Map<String, List<String>> who = new LinkedHashMap<>();
    for (Curve.Change change : changes) {
      who.computeIfAbsent(says(change), says -> new ArrayList<>()).add(change.subject());
    }
    List<String> sentences = new ArrayList<>();
    who.forEach((says, names) -> sentences.add(sentence(names, says)));
    return String.join("; ", sentences);
  }

  private static String sentence(List<String> names, String says) {
    String joined = String.join(", ", Together.of(names));
    return joined.isEmpty() ? says : joined + " " + (names.size() > 1 ? plural(says) : says);
  }

  /** The words as several subjects need them: {@code shuts} becomes {@code shut}. */
  private static String plural(String says) {
    if (says.startsWith(NO_LONGER)) {
      return NO_LONGER + plural(says.substring(NO_LONGER.length()));
    }
    int blank = says.indexOf(' ');
    String verb = blank < 0 ? says : says.substring(0, blank);
    String rest = blank < 0 ? "" : says.substring(blank);
    String many =
        switch (verb) {
          case "is" -> "are";
          case "IS" -> "ARE";
          case "has" -> "have";
          case "goes" -> "go";
          case "GOES" -> "GO";
          case "passes" -> "pass";
          case "side:" -> "sides:";
          default -> verb.replaceFirst("[sS](?=[:,]?$)", "");
        };
    return many + rest.replace(" and has ", " and have ").replace(" its ", " their ");
  }

  /** What a change is, without its subject. */
  public static String says(Curve.Change change) {
    return switch (change.what()) {
      case LEADER -> (change.subject().isEmpty() ? "" : "side: ") + leader(change);
      case TABLE -> table(change.after());
      case DONE -> change.after();
      case PART ->
          FROM.getOrDefault(
              change.before() + ">" + change.after(),
              NOW.getOrDefault(
                  change.after(), "goes from " + change.before() + " to " + change.after()));
    };
  }

  private static String leader(Curve.Change change) {
    String before = bare(change.subject(), change.before());
    String after = bare(change.subject(), change.after());
    if (after.isEmpty()) {
      return "the " + before + " no longer feeds it";
    }
    return before.isEmpty()
        ? "the " + after + " begins to feed it"
        : "the " + after + " takes over from the " + before;
  }

  private static String bare(String side, String name) {
    return !side.isEmpty() && name.startsWith(side + " ")
        ? name.substring(side.length() + 1)
        : name;
  }

  private static String table(String after) {
    return after.startsWith("within")
        ? "is within its table from here on"
        : "is outside its table from here on: a guess";
  }
}
