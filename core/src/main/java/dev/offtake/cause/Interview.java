package dev.offtake.cause;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Item.Words;
import dev.offtake.system.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Readings that are asked for one by one. A question is the name of a thing and nothing else: an
 * expected value would be read into the needle. An empty answer means not read.
 */
public final class Interview {
  /** How the answers are called in problems; the line is the number of the answer, 0 the power. */
  private static final String FILE = "answers";

  private final BleedSystem system;
  private final List<About> asked;

  /** Begins an interview about a system. */
  public Interview(BleedSystem system) {
    this.system = system;
    asked = new Vocabulary(system).asked();
  }

  /** What is asked after the power, in this order. */
  public List<String> questions() {
    return asked.stream().map(About::name).toList();
  }

  /**
   * Whether an answer can be taken, so that it can be asked again at once.
   *
   * @param at power, with line-up and switches as on the command line
   * @param question number of the question
   * @param answer as typed
   */
  public ReadingsRead one(String at, int question, String answer) {
    List<String> answers = new ArrayList<>();
    for (int i = 0; i < question; i++) {
      answers.add("");
    }
    answers.add(answer);
    return read(at, answers);
  }

  /**
   * Reads the answers.
   *
   * @param at power, with line-up and switches as on the command line
   * @param answers one for each question; those that are missing at the end were not read
   */
  public ReadingsRead read(String at, List<String> answers) {
    Problems problems = new Problems();
    Gauges gauges = new Gauges(system, false, problems);
    OccasionReader reader = new OccasionReader(system, gauges, Optional.empty(), problems);
    Head head = new Head(new Words(FILE, 0, at));
    reader.heads().read(head, new Words(FILE, 0, at.strip()));
    List<Entered> rows = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      String answer = i < answers.size() ? answers.get(i) : "";
      Words name = new Words(FILE, i + 1, asked.get(i).name());
      rows.add(Entered.of(name, new Words(FILE, i + 1, answer.strip())));
    }
    List<Occasion> occasions = reader.read(head, rows).map(List::of).orElse(List.of());
    Readings readings = Readings.of(gauges.all(), occasions, List.of());
    return ReadingsReader.done(Optional.of(readings), problems);
  }
}
