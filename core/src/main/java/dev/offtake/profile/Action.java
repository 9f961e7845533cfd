package dev.offtake.profile;

import dev.offtake.study.Fault;
import java.util.List;

/** Something that is done, or that happens, at a time. */
public sealed interface Action {
  /** When it begins, s. */
  double at();

  /** Line of the profile, from 1. */
  int line();

  /**
   * A switch is moved, or a valve is locked by hand.
   *
   * @param what full name
   * @param to position of the switch, or how the valve is locked
   */
  record Turn(double at, int line, String what, String to) implements Action {}

  /**
   * Core speed moves on a straight line.
   *
   * @param until when it is there, s, after {@code at}
   * @param from where it begins; it must stand there
   * @param to where it ends
   * @param by what it is called: {@code core}, {@code accelerate}, {@code decelerate}
   */
  record Ramp(double at, int line, double until, Speeds from, Speeds to, String by)
      implements Action {}

  /**
   * Parts fail.
   *
   * @param faults what breaks
   */
  record Breaks(double at, int line, List<Fault> faults) implements Action {
    /** Keeps its list. */
    public Breaks {
      faults = List.copyOf(faults);
    }
  }

  /**
   * The hose of a supply is fitted or taken off.
   *
   * @param supply full name
   * @param connected whether it is fitted
   */
  record Hose(double at, int line, String supply, boolean connected) implements Action {}

  /**
   * A starter begins to turn the engine.
   *
   * @param to where the start ends
   */
  record StartUp(double at, int line, Speeds to) implements Action {}

  /**
   * Fuel is cut; the engine runs down.
   *
   * @param from where the core stands
   * @param until when it stands still, s
   */
  record ShutDown(double at, int line, Speeds from, double until) implements Action {}
}
