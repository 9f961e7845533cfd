package dev.offtake.severity;

import java.util.Optional;

/**
 * What a failure can lead to, as far as the model sees it, the gravest first. The class that each
 * has when the file does not say another is an assumption.
 */
public enum Criterion {
  /** A trip's or leak loop's limit is passed and it does not act. */
  UNPROTECTED("limit passed and nothing acts", Severity.CATASTROPHIC),
  /** A trip or leak loop has acted and no light says so. */
  UNTOLD("protection acts and no light tells", Severity.CRITICAL),
  /** A limit that the papers allow nobody to pass is passed. */
  OVER_LIMIT("a limit is passed", Severity.CRITICAL),
  /** Air runs back into the engine through a tap. */
  RECIRCULATION("air runs back into the engine", Severity.CRITICAL),
  /** Hot air escapes. */
  LEAK("hot air leaks out", Severity.CRITICAL),
  /** Pieces are loose in the air stream. */
  PIECES("pieces loose in the air", Severity.CRITICAL),
  /** Users of one kind of service on all sides go short. */
  ALL_SHORT("a service is lost on all sides", Severity.CRITICAL),
  /** A user goes short. */
  SHORT("a user goes short", Severity.MARGINAL),
  /** A trip has acted. */
  TRIPPED("a trip acts", Severity.MARGINAL),
  /** A relief valve is open. */
  RELIEVED("a relief valve opens", Severity.MARGINAL),
  /** A place is hotter than at any power of the healthy system. */
  HOTTER("a place is hotter than ever when healthy", Severity.MARGINAL),
  /** There is no state at rest, or none that balances. */
  NO_REST("no steady state", Severity.MARGINAL),
  /** A gauge, a light or a user shows that something differs. */
  SHOWS("something shows", Severity.MINOR),
  /** Nothing of this. */
  NOTHING("nothing that matters", Severity.MINOR);

  private final String words;
  private final Severity usual;

  Criterion(String words, Severity usual) {
    this.words = words;
    this.usual = usual;
  }

  /** As a file and a table write it. */
  public String words() {
    return words;
  }

  /** Class when the file says nothing else. */
  public Severity usual() {
    return usual;
  }

  /** The criterion of the given words. */
  public static Optional<Criterion> of(String text) {
    for (Criterion criterion : values()) {
      if (criterion.words.equals(text)) {
        return Optional.of(criterion);
      }
    }
    return Optional.empty();
  }
}
