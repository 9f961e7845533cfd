package dev.offtake.profile;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.FileText;
import dev.offtake.system.Hint;
import dev.offtake.system.Item;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import dev.offtake.system.Texts;
import dev.offtake.system.YamlTree;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads profiles. Never throws for what a text says. */
public final class ProfileReader {
  static final String VERSION = "offtake profile";
  static final String SYSTEM = "system";
  static final String TITLE = "title";
  static final String ABOUT = "about";
  static final String START = "start";
  static final String ACTIONS = "actions";
  static final String ENDS = "ends at";
  static final String SHOW = "show";

  /** All sections, in the order in which they are told. */
  static final List<String> SECTIONS =
      List.of(
          VERSION,
          SYSTEM,
          TITLE,
          ABOUT,
          START,
          Schedule.ACCELERATION,
          Schedule.START_UP,
          Paces.SECTION,
          ACTIONS,
          ENDS,
          SHOW);

  /** Most actions; more are a recording and no profile. */
  static final int MOST = 1000;

  /** How long is played after the last action where nothing is said, s. */
  private static final double AFTER = 30;

  private static final YamlTree.Begin BEGIN =
      new YamlTree.Begin(
          "profile", "Begin with `offtake profile: 1`, then `start:` and `actions:`");

  private final String file;
  private final BleedSystem system;
  private final Problems problems;

  private ProfileReader(String file, BleedSystem system, Problems problems) {
    this.file = file;
    this.system = system;
    this.problems = problems;
  }

  /**
   * Reads a file.
   *
   * @param path the profile
   * @param system what it is played on
   */
  public static ProfileRead read(Path path, BleedSystem system) {
    Path last = path.getFileName();
    String name = last == null || last.toString().isEmpty() ? path.toString() : last.toString();
    Problems problems = new Problems();
    String text = FileText.read(path, name, problems);
    Optional<Profile> profile =
        text == null ? Optional.empty() : new ProfileReader(name, system, problems).profile(text);
    return done(profile, problems);
  }

  /**
   * Reads a text.
   *
   * @param name how the text is called in problems
   * @param text the profile
   * @param system what it is played on
   */
  public static ProfileRead readText(String name, String text, BleedSystem system) {
    Problems problems = new Problems();
    String checked = FileText.decode(text.getBytes(StandardCharsets.UTF_8), name, problems);
    Optional<Profile> profile =
        checked == null
            ? Optional.empty()
            : new ProfileReader(name, system, problems).profile(checked);
    return done(profile, problems);
  }

  private static ProfileRead done(Optional<Profile> profile, Problems problems) {
    return new ProfileRead(problems.none() ? profile : Optional.empty(), problems.sorted());
  }

  private Optional<Profile> profile(String text) {
    Section root = YamlTree.read(file, text, BEGIN, problems);
    if (root == null || !version(root)) {
      return Optional.empty();
    }
    for (Entry entry : root.entries().values()) {
      String key = entry.name().text();
      if (!SECTIONS.contains(key)) {
        problems.add(entry.name(), "A profile has no line `" + key + "`", Hint.of(key, SECTIONS));
      }
    }
    Handles handles = new Handles(system, problems);
    StartReader starts = new StartReader(system, handles, problems);
    Start start = starts.read(section(root, START));
    PowerReader powers = new PowerReader(system, start.day(), problems);
    Schedule schedule = new Schedule(powers, problems);
    schedule.read(section(root, Schedule.ACCELERATION), section(root, Schedule.START_UP));
    ActionReader reader = new ActionReader(system, handles, starts, powers, schedule, problems);
    List<Action> actions = actions(root, start, reader);
    List<String> assumes = new ArrayList<>(schedule.assumes());
    double end = end(root, actions, assumes);
    return Optional.of(
        new Profile(
            text(root, SYSTEM),
            text(root, TITLE),
            text(root, ABOUT),
            start,
            schedule.inputs(),
            Paces.read(section(root, Paces.SECTION), system, problems),
            actions,
            end,
            text(root, SHOW),
            assumes));
  }

  private boolean version(Section root) {
    if (text(root, VERSION).equals("1")) {
      return true;
    }
    Entry given = root.entries().get(VERSION);
    if (given != null) {
      String wrong = "This profile is of version " + given.value().words();
      problems.add(given.value(), wrong, "This Offtake reads `offtake profile: 1`");
    } else if (root.entries().containsKey("offtake")) {
      String mend = "Give the profile; the system file comes before it";
      problems.add(root, "This is a system file, not a profile", mend);
    } else if (root.entries().containsKey("offtake readings")) {
      problems.add(root, "These are readings, not a profile", BEGIN.mend());
    } else {
      problems.add(root, "This is not a profile", BEGIN.mend());
    }
    return false;
  }

  private List<Action> actions(Section root, Start start, ActionReader reader) {
    Section section = section(root, ACTIONS);
    for (Entry entry : section.entries().values()) {
      reader.read(entry);
    }
    if (section.entries().isEmpty() && problems.none()) {
      problems.add(
          root, "Nothing is done in this profile", "Write `actions:` and `at 5 s:` under it");
    }
    if (reader.actions().size() > MOST) {
      String wrong = "A profile of " + reader.actions().size() + " actions is no profile";
      problems.add(section, wrong, "Keep to " + MOST + " at most");
      return List.of();
    }
    return new ProfileChecks(file, system, start, problems).all(reader.actions());
  }

  private double end(Section root, List<Action> actions, List<String> assumes) {
    double last = 0;
    for (Action action : actions) {
      last = Math.max(last, action.at());
      last = action instanceof Action.Ramp ramp ? Math.max(last, ramp.until()) : last;
      last = action instanceof Action.ShutDown off ? Math.max(last, off.until()) : last;
    }
    Entry entry = root.entries().get(ENDS);
    if (entry == null) {
      assumes.add("Nothing says when it ends: played for 30 s after the last action.");
      return last + AFTER;
    }
    double end = Moment.seconds(words(entry), problems);
    if (end <= last) {
      String wrong =
          "It ends at "
              + words(entry).text()
              + ", and something moves until "
              + ActionReader.seconds(last);
      problems.add(entry.value(), wrong, "Let it end later");
    }
    return Double.isNaN(end) ? last + AFTER : end;
  }

  private Section section(Section root, String key) {
    Entry entry = root.entries().get(key);
    if (entry != null && entry.value() instanceof Section section) {
      return section;
    }
    if (entry != null && !entry.value().words().equals("nothing")) {
      problems.add(
          entry.value(), "`" + key + "` needs named lines", "Write `name: value` under it");
    }
    return Section.emptyAt(root);
  }

  private Words words(Entry entry) {
    Item value = entry.value();
    if (value instanceof Words words) {
      return Texts.at(words, Texts.value(words.text()));
    }
    String key = entry.name().text();
    problems.add(value, "`" + key + "` needs words, not " + value.words(), "Write one line");
    return Texts.at(value, "");
  }

  private String text(Section root, String key) {
    Entry entry = root.entries().get(key);
    if (entry == null) {
      return "";
    }
    boolean prose = key.equals(TITLE) || key.equals(ABOUT);
    return prose && entry.value() instanceof Words words ? words.text() : words(entry).text();
  }
}
