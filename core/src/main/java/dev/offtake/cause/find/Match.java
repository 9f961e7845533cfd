package dev.offtake.cause.find;

import dev.offtake.cause.Reading;
import dev.offtake.cause.Readings;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.ModelError;
import java.util.List;

/**
 * What a healthy run tells of the numbers that the file leaves loose.
 *
 * @param system as its file describes it
 * @param readings of the run
 * @param numbers each loose number of the file, in its order
 * @param together numbers that the readings determine only together
 * @param left what is left of each number that was read, in the order of the readings
 * @param ignored readings that are no numbers, and were not used
 * @param otherwise lights that stood otherwise than in the matched system
 * @param pressure model error of pressures, as a share
 * @param temperature model error of temperatures, K
 * @param fit chance that a sound engine leaves as much or more
 * @param others loose numbers, gauges and conditions that moved as well and are not in the list
 * @param settled whether the matching came to rest
 * @param paces how valves move, where a recording was matched
 * @param courses what is left of what was recorded
 */
public record Match(
    BleedSystem system,
    Readings readings,
    List<MatchedNumber> numbers,
    List<Together> together,
    List<Left> left,
    List<Reading> ignored,
    List<Reading> otherwise,
    ErrorLeft pressure,
    ErrorLeft temperature,
    double fit,
    int others,
    boolean settled,
    List<MatchedPace> paces,
    List<MatchedCourse> courses) {

  /** Less likely than which the readings are not those of a sound engine. */
  private static final double SOUND = 0.01;

  /** Keeps its lists. */
  public Match {
    numbers = List.copyOf(numbers);
    together = List.copyOf(together);
    left = List.copyOf(left);
    ignored = List.copyOf(ignored);
    otherwise = List.copyOf(otherwise);
    paces = List.copyOf(paces);
    courses = List.copyOf(courses);
  }

  /**
   * Two numbers of which the readings tell only a sum or a difference.
   *
   * @param one number in the list
   * @param other number in the list
   * @param sum whether their sum is told, else their difference, each counted in its own prior
   *     standard deviations
   * @param told share of what was not known that the readings tell, 0 to 1
   */
  public record Together(int one, int other, boolean sum, double told) {}

  /**
   * What is left of a reading.
   *
   * @param scene when it was read
   * @param reading as it was made
   * @param read the number, SI
   * @param before what the file as it is foretells, SI
   * @param after what the matched system foretells, with its gauges, SI
   * @param errors what is left, in standard deviations of what gauge and model may do
   * @param score how far it lies from what all the other readings make of it, in standard
   *     deviations
   * @param fits whether it lay within three of them before the model error was made to fit
   */
  public record Left(
      Scene scene,
      Reading reading,
      double read,
      double before,
      double after,
      double errors,
      double score,
      boolean fits) {
    /** Farther than which a reading does not fit, in standard deviations. */
    static final double FAR = 3;
  }

  /**
   * What readings leave unexplained, as an error of the model.
   *
   * @param before in force before
   * @param after estimated; that before when the readings are too few to tell
   * @param readings how many tell of it
   * @param freedom degrees of freedom that matching left them
   */
  public record ErrorLeft(double before, double after, int readings, double freedom) {
    /** Fewer degrees of freedom than which tell nothing. */
    static final double FEWEST = 3;

    /** Whether the readings are enough to tell. */
    public boolean told() {
      return freedom >= FEWEST;
    }
  }

  /** Whether the run looks like that of a sound engine. */
  public boolean healthy() {
    return settled
        && fit >= SOUND
        && otherwise.isEmpty()
        && left.stream().allMatch(Left::fits)
        && numbers.stream().noneMatch(MatchedNumber::faulty);
  }

  /** Numbers that are worth writing. */
  public List<MatchedNumber> worthWriting() {
    return numbers.stream().filter(n -> n.verdict() != MatchedNumber.Verdict.NOT_TOLD).toList();
  }

  /** How valves move, as far as the recording tells. */
  public List<MatchedPace> toldPaces() {
    return paces.stream().filter(p -> p.verdict() != MatchedNumber.Verdict.NOT_TOLD).toList();
  }

  /** The model error that the run tells, where it tells any. */
  public ModelError modelError() {
    ModelError now = system.modelError();
    return now.with(
        pressure.told() ? pressure.after() : Double.NaN,
        temperature.told() ? temperature.after() : Double.NaN);
  }
}
