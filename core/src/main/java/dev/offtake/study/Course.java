package dev.offtake.study;

import dev.offtake.part.Conditions;
import dev.offtake.solve.Settler;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * One question asked at other core speeds: same day, same line-up, the fan following the core.
 *
 * <p>Remembers its answers, so that two studies along the same way solve once. Belongs to one
 * thread.
 */
public final class Course {
  private final Settler settler;
  private final Setup setup;
  private final DoubleUnaryOperator fan;
  private final Map<Double, Optional<Solution>> known = new HashMap<>();
  private final Map<String, Course> varied = new HashMap<>();

  /**
   * Prepares a course.
   *
   * @param settler solves
   * @param setup the question at the speed where the course begins
   * @param fan fan speed that belongs to a core speed, fractions
   */
  public Course(Settler settler, Setup setup, DoubleUnaryOperator fan) {
    this.settler = settler;
    this.setup = setup;
    this.fan = fan;
  }

  /** Core speed where the course begins, a fraction. */
  public double here() {
    return setup.conditions().core();
  }

  /** The question at a core speed, a fraction. */
  Setup question(double core) {
    Conditions c = setup.conditions();
    double turns = core == c.core() ? c.fan() : fan.applyAsDouble(core);
    return setup.at(c.withSpeeds(core, turns));
  }

  /** The question where the course begins. */
  Setup setup() {
    return setup;
  }

  /** The same course with one number of one part changed; asked again, it is the same object. */
  Course with(Setup.PartNumber number, double value) {
    return varied.computeIfAbsent(number + "=" + value, key -> vary(number, value));
  }

  private Course vary(Setup.PartNumber number, double value) {
    Map<Setup.PartNumber, Double> changed = new HashMap<>(setup.changed());
    changed.put(number, value);
    Setup other = new Setup(setup.conditions(), setup.positions(), setup.locks(), changed);
    return new Course(settler, other, fan);
  }

  /**
   * The state at a core speed.
   *
   * @param core a fraction
   * @return empty when there is no answer
   */
  public Optional<Solution> at(double core) {
    return known.computeIfAbsent(core, this::solve);
  }

  private Optional<Solution> solve(double core) {
    Solution solution = settler.solve(question(core));
    return solution.solved() ? Optional.of(solution) : Optional.empty();
  }
}
