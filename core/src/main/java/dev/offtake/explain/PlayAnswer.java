package dev.offtake.explain;

import dev.offtake.profile.BleedDown;
import dev.offtake.profile.Profile;
import dev.offtake.profile.Shortage;
import dev.offtake.profile.Watch;
import dev.offtake.time.Cycle;
import dev.offtake.time.Event;
import dev.offtake.time.Played;
import java.util.List;
import java.util.Optional;

/**
 * What a person is told about a profile that was played.
 *
 * @param asked how it began, and what it stands on
 * @param profile what was done
 * @param done whether all of it was played
 * @param trouble why it could not go on, one sentence without a full stop; empty when it could
 * @param headline the answer in a few sentences
 * @param story what happened, by time
 * @param events every event, those that the story leaves out included
 * @param limits what trips, leak loops and relief valves saw
 * @param shortages when users went short
 * @param hunts valves that swung and did not come to rest
 * @param end how steady it is where it ended, in sentences; empty where it was not at rest
 * @param curve chosen values over time, with the story as its events
 * @param bleed how trapped air leaves; empty where the engine still runs
 * @param assumes what was taken for granted, a sentence each
 */
public record PlayAnswer(
    Asked asked,
    Profile profile,
    boolean done,
    String trouble,
    List<String> headline,
    List<Told> story,
    List<Event> events,
    List<Watch.Seen> limits,
    List<Shortage> shortages,
    List<Cycle> hunts,
    List<String> end,
    CurveAnswer curve,
    Optional<Bleeding> bleed,
    List<String> assumes) {

  /** Keeps its lists. */
  public PlayAnswer {
    headline = List.copyOf(headline);
    story = List.copyOf(story);
    events = List.copyOf(events);
    limits = List.copyOf(limits);
    shortages = List.copyOf(shortages);
    hunts = List.copyOf(hunts);
    end = List.copyOf(end);
    assumes = List.copyOf(assumes);
  }

  /**
   * A line of the story.
   *
   * @param at when, s
   * @param done whether somebody did it, else it came of itself
   * @param says one sentence without a full stop
   */
  public record Told(double at, boolean done, String says) {}

  /**
   * How trapped air leaves.
   *
   * @param healthy without a cause
   * @param causes with each cause
   * @param worst what to expect of each pocket, the slowest first
   * @param proof how a gauge proves it, a sentence for each pocket that is slow
   * @param open what would let it out, a sentence each
   */
  public record Bleeding(
      BleedDown healthy,
      List<Caused> causes,
      List<Worst> worst,
      List<String> proof,
      List<String> open) {
    /** Keeps its lists. */
    public Bleeding {
      causes = List.copyOf(causes);
      worst = List.copyOf(worst);
      proof = List.copyOf(proof);
      open = List.copyOf(open);
    }
  }

  /**
   * How it bleeds down with something broken.
   *
   * @param words what is broken
   * @param down how it bleeds down
   */
  public record Caused(String words, BleedDown down) {
    /** Whether it could be looked at to its end. */
    public boolean done() {
      return down.end() == Played.End.DONE;
    }
  }

  /**
   * What to expect of a pocket.
   *
   * @param pocket its points, in words
   * @param begins pressure in it when the engine stands, Pa above the air outside
   * @param healthy s after fuel is cut; infinite where it does not fall
   * @param worst likewise, over all causes
   * @param cause the cause that makes it so; empty for the healthy system
   * @param left pressure that is left in the worst case when looking ends, Pa above the outside
   */
  public record Worst(
      String pocket, double begins, double healthy, double worst, String cause, double left) {}
}
