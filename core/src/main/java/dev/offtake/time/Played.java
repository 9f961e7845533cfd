package dev.offtake.time;

import dev.offtake.solve.Quantity;
import dev.offtake.solve.Solution;
import java.util.List;

/** A drive that was played: the state at any instant, and what happened. */
public interface Played {
  /** Why playing ended. */
  enum End {
    /** All of it was played. */
    DONE,
    /** It was called off. */
    CANCELLED,
    /** There was no steady state to start from. */
    NO_START,
    /** It could not go on. */
    STUCK
  }

  /** Why it ended. */
  End end();

  /** Why it could not go on, in a sentence without a full stop; empty when it could. */
  String resists();

  /** How much was played, s. */
  double seconds();

  /**
   * The state at an instant.
   *
   * @param seconds from 0 to {@link #seconds()}; outside the nearest of them. At a jump the state
   *     after it
   * @throws IllegalStateException when there was no steady state to start from
   */
  Solution at(double seconds);

  /**
   * The course of numbers, at little cost.
   *
   * @param what is read
   * @param seconds at which instants, rising
   * @return one row for each number
   */
  double[][] course(List<Quantity> what, double[] seconds);

  /** What happened, in the order of time. Found when first asked for. */
  List<Event> events();

  /** Ends of the steps that were made, s, from 0 on. */
  double[] instants();

  /**
   * Stretches in which swings that were small and no longer grew were not followed: there the
   * course shows about their middle.
   */
  List<Unfollowed> unfollowed();

  /**
   * A stretch of time in which swings go on as they were, but are not followed.
   *
   * @param from s
   * @param until s
   * @param since so long before it the last swings were followed that were alike, s
   */
  record Unfollowed(double from, double until, double since) {}

  /** What it cost. */
  Cost cost();

  /**
   * What playing cost.
   *
   * @param steps that were taken
   * @param rejected that were made and not taken
   * @param iterations Newton's, over all steps
   * @param factors of the Jacobian that were made
   */
  record Cost(int steps, int rejected, int iterations, int factors) {}
}
