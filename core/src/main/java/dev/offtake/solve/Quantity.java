package dev.offtake.solve;

import dev.offtake.network.Equations;
import dev.offtake.part.Branch;
import java.util.stream.IntStream;

/** A number that is read off an evaluated state, such as what a gauge shows. */
public interface Quantity {
  /**
   * The number.
   *
   * @param at equations that stand at the state, evaluated
   * @return SI
   */
  double read(Equations at);

  /**
   * Variables on which the number depends, by which it is differentiated. Those of boundary points
   * may be among them and are passed over.
   *
   * @param of the equations that the state belongs to
   */
  int[] variables(Equations of);

  /** Total pressure of an inner point, Pa absolute. */
  static Quantity pressure(int point) {
    return of(e -> e.evaluation().gas[point].p, e -> new int[] {e.lnP(point)});
  }

  /** Temperature of an inner point, K. */
  static Quantity temperature(int point) {
    return of(e -> e.evaluation().gas[point].t, e -> new int[] {e.lnP(point) + 1});
  }

  /** Static pressure that a gauge feels at an inner point, Pa absolute. */
  static Quantity sensed(int point) {
    return of(
        e -> e.sensedPressure(point),
        e -> {
          int[] own = {e.lnP(point), e.lnP(point) + 1};
          Branch branch = e.sensedIn(point);
          return branch == null ? own : union(own, branch.variables);
        });
  }

  /** Flow through a leg of a part, kg/s. */
  static Quantity flow(int part, int leg) {
    return of(e -> e.branches(part)[leg].mdot, e -> e.branches(part)[leg].variables);
  }

  /**
   * A control of a part. It does not move with the variables.
   *
   * @param part number of the part
   * @param which position among {@link dev.offtake.part.Part#controls()}
   */
  static Quantity control(int part, int which) {
    return of(e -> e.evaluation().controls[e.firstControl(part) + which], e -> new int[0]);
  }

  /**
   * What a part tells of itself, in the unit of the observable.
   *
   * @param part number of the part
   * @param which position among {@link dev.offtake.part.Part#observables()}
   */
  static Quantity observed(int part, int which) {
    return of(
        e -> {
          double[] out = new double[e.network().parts().get(part).observables().size()];
          e.element(part).observe(e.evaluation(), out, 0);
          return out[which];
        },
        // A part may look at any point: the few variables of a network are all tried.
        e -> IntStream.range(0, e.evaluation().variables.length).toArray());
  }

  /** This number less another. */
  default Quantity minus(Quantity other) {
    return of(e -> read(e) - other.read(e), e -> union(variables(e), other.variables(e)));
  }

  private static int[] union(int[] one, int[] two) {
    return IntStream.concat(IntStream.of(one), IntStream.of(two)).distinct().toArray();
  }

  private static Quantity of(Reader reader, Variables variables) {
    return new Quantity() {
      @Override
      public double read(Equations at) {
        return reader.of(at);
      }

      @Override
      public int[] variables(Equations of) {
        return variables.of(of);
      }
    };
  }

  /** Reads a number. */
  @FunctionalInterface
  interface Reader {
    /** The number, SI. */
    double of(Equations at);
  }

  /** Tells variables. */
  @FunctionalInterface
  interface Variables {
    /** The variables. */
    int[] of(Equations equations);
  }
}
