package dev.offtake.profile;

import dev.offtake.quantity.Style;
import java.util.List;

/** What an action does, in words. */
final class ActionWords {
  private ActionWords() {}

  /** One sentence without a full stop. */
  static String of(Action action) {
    if (action instanceof Action.Turn turn) {
      return turn.what() + " to " + turn.to();
    }
    if (action instanceof Action.Ramp ramp) {
      String does = ramp.to().core() > ramp.from().core() ? "speeds up" : "slows down";
      return "the core "
          + does
          + " from "
          + ramp.from().name()
          + " to "
          + ramp.to().name()
          + " in "
          + ActionReader.seconds(ramp.until() - ramp.at());
    }
    if (action instanceof Action.Breaks breaks) {
      List<String> faults = breaks.faults().stream().map(fault -> fault.words(Style.SHOP)).toList();
      return "BREAKS: " + String.join("; ", faults);
    }
    if (action instanceof Action.Hose hose) {
      return "hose of " + hose.supply() + (hose.connected() ? " is fitted" : " is taken off");
    }
    if (action instanceof Action.StartUp up) {
      return "the starter turns the engine up to " + up.to().name();
    }
    if (action instanceof Action.ShutDown off) {
      return "fuel off, the engine runs down from "
          + off.from().name()
          + " in "
          + ActionReader.seconds(off.until() - off.at());
    }
    return "";
  }
}
