package dev.offtake.time;

import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;
import java.util.List;

/** A drive that could not begin, for want of a steady state to start from. */
record NotPlayed(Solution start) implements Played {
  @Override
  public End end() {
    return End.NO_START;
  }

  @Override
  public String resists() {
    if (!start.refusals().isEmpty()) {
      var first = start.refusals().entrySet().iterator().next();
      return first.getKey() + ": " + first.getValue();
    }
    return start.outcome().cycle().isEmpty()
        ? "no steady state to start from: " + start.outcome().resists() + " does not balance"
        : "no steady state to start from: "
            + String.join(", ", start.outcome().cycle())
            + " find no rest";
  }

  @Override
  public double seconds() {
    return 0;
  }

  @Override
  public Solution at(double seconds) {
    throw new IllegalStateException(resists());
  }

  @Override
  public double[][] course(List<Quantity> what, double[] seconds) {
    throw new IllegalStateException(resists());
  }

  @Override
  public List<Event> events() {
    return List.of();
  }

  @Override
  public double[] instants() {
    return new double[0];
  }

  @Override
  public List<Unfollowed> unfollowed() {
    return List.of();
  }

  @Override
  public Cost cost() {
    return new Cost(0, 0, 0, 0);
  }
}
