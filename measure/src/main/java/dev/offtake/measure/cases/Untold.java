package dev.offtake.measure.cases;

import java.util.Map;
import java.util.Optional;

/** Listed modes that are not drawn, and why: no reading of these runs could show them. */
public final class Untold {
  private static final String MOVES = "shows only while power moves; these readings are at rest";
  private static final String START = "the starter is never on in these runs";

  private static final Map<String, String> BY_MODE =
      Map.of(
          "slow",
          MOVES,
          "moves in jerks",
          MOVES,
          "reset does not hold",
          MOVES,
          "latch does not hold",
          "trips and resets by turns: no state at rest",
          "does not reseat",
          "a valve that has not opened stands as a healthy one",
          "torque low",
          START,
          "position switch out of adjustment",
          "what a person then sees is not told by the file");

  private static final Map<String, String> BY_PART =
      Map.of(
          "starter takes too much", START,
          "starter takes too little", START,
          "starter stuck shut", START,
          "louvre blocked", "a zone without a leak has no flow");

  private Untold() {}

  /** Why a mode is not drawn; empty for one that is. */
  public static Optional<String> why(ModeLine line) {
    String byMode = BY_MODE.get(line.mode());
    if (byMode != null) {
      return Optional.of(byMode);
    }
    return BY_PART.entrySet().stream()
        .filter(entry -> line.name().endsWith(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
