package dev.offtake.profile;

import dev.offtake.logic.Condition;
import dev.offtake.part.Conditions;
import dev.offtake.part.Control;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Setup;
import dev.offtake.study.Fault;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Problems;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Goes through a profile once to know where the core is at each time. */
final class Rehearsal {
  private final BleedSystem system;
  private final Profile profile;
  private final Scene scene;
  private final PowerReader powers;
  private final List<Action> actions;
  private final List<Happening> happenings = new ArrayList<>();
  private final List<String> assumes = new ArrayList<>();
  private CoreLine core;

  Rehearsal(BleedSystem system, Profile profile, List<Fault> more) {
    this.system = system;
    this.profile = profile;
    scene = new Scene(system, profile.start(), more);
    powers = new PowerReader(system, profile.start().day(), new Problems());
    actions = new ArrayList<>(profile.actions());
    core = CoreLine.from(profile.start().power());
    assumes.addAll(profile.assumes());
  }

  CoreLine core() {
    return core;
  }

  /** What is done, with the switches that a start lets go by itself. */
  List<Action> actions() {
    return actions;
  }

  List<Happening> happenings() {
    happenings.sort(Comparator.comparingDouble(Happening::at));
    return happenings;
  }

  List<String> assumes() {
    return assumes;
  }

  /** Finds core and fan speed over the whole profile. */
  void moveCore() {
    for (Action action : profile.actions()) {
      scene.act(action);
      if (action instanceof Action.Ramp ramp) {
        core = core.then(ramp.at(), ramp.until(), ramp.to().core(), ramp.to().fan());
      } else if (action instanceof Action.ShutDown off) {
        core = core.then(off.at(), off.until(), 0, 0);
        happenings.add(new Happening(off.until(), "the engine stands"));
      } else if (action instanceof Action.StartUp up) {
        startUp(up);
      }
      happenings.add(new Happening(action.at(), ActionWords.of(action)));
    }
    if (!system.sides().isEmpty() && system.sides().size() > 1 && moved()) {
      assumes.add("All engines turn at the same core speed: the model has one power.");
    }
    actions.sort(Comparator.comparingDouble(Action::at));
  }

  private boolean moved() {
    return core.knots().size() > 1;
  }

  private void startUp(Action.StartUp up) {
    double until = next(up);
    Spool spool = new Spool(profile.inputs(), scene.network(), powers::fan);
    Spool.Run run =
        spool.run(
            up.at(),
            until,
            up.to().core(),
            core.at(up.at()).core(),
            (time, speed, fan) -> setup(up, time, speed, fan));
    take(run);
    told(up, run);
    inputs();
  }

  /** How things stand at a time of a start, with what is done meanwhile. */
  private Setup setup(Action.StartUp up, double time, double speed, double fan) {
    Scene then = scene.copy();
    boolean after = false;
    for (Action action : profile.actions()) {
      if (after && action.at() <= time) {
        then.act(action);
      }
      after |= action.equals(up);
    }
    Conditions conditions = profile.start().conditions(speed, fan);
    return then.setup(conditions);
  }

  /** When the core is moved again after a start, or the end. */
  private double next(Action.StartUp up) {
    return profile.actions().stream()
        .filter(action -> action.at() > up.at())
        .filter(action -> action instanceof Action.Ramp || action instanceof Action.ShutDown)
        .mapToDouble(Action::at)
        .findFirst()
        .orElse(profile.end());
  }

  private void take(Spool.Run run) {
    for (int i = 1; i < run.knots().size(); i++) {
      CoreLine.Knot knot = run.knots().get(i);
      core = core.then(run.knots().get(i - 1).at(), knot.at(), knot.core(), knot.fan());
    }
  }

  private void told(Action.StartUp up, Spool.Run run) {
    CoreLine.Knot last = run.knots().get(run.knots().size() - 1);
    if (!Double.isNaN(run.lit())) {
      happenings.add(new Happening(run.lit(), "the engine lights, core " + percent(at(run.lit()))));
    }
    if (!Double.isNaN(run.cutOut())) {
      letGo(run.cutOut());
    }
    String says =
        switch (run.end()) {
          case IDLE -> up.to().name() + " is reached, core " + percent(last.core());
          case HUNG ->
              "the start HANGS at core "
                  + percent(last.core())
                  + ": the starter's torque is used up";
          case CUT_SHORT -> "the start is cut short at core " + percent(last.core());
        };
    happenings.add(new Happening(last.at(), says));
  }

  private double at(double time) {
    return core.at(time).core();
  }

  /** Switches that keep a starter turning go back by themselves. */
  private void letGo(double at) {
    List<String> back = new ArrayList<>();
    for (String control : turning()) {
      String first = system.switches().getOrDefault(control, List.of("")).get(0);
      actions.add(new Action.Turn(at, 0, control, first));
      back.add(control + " back to " + first);
    }
    String words = back.isEmpty() ? "no switch lets it go: it stays on" : String.join(", ", back);
    happenings.add(
        new Happening(at, "the starter cuts out at core " + percent(at(at)) + ": " + words));
  }

  /** Switches off their first position that open a starter. */
  private Set<String> turning() {
    Set<String> found = new LinkedHashSet<>();
    for (Part part : system.parts()) {
      if (part.kind().equals("starter")) {
        part.controls().forEach(control -> found.addAll(asked(control)));
      }
    }
    found.removeIf(
        name ->
            !system.switches().containsKey(name)
                || system.switches().get(name).get(0).equals(scene.position(name)));
    return found;
  }

  private static Set<String> asked(Control control) {
    Set<String> names = new LinkedHashSet<>();
    for (Control.Rule rule : control.rules()) {
      Condition when = rule.when();
      if (when != null) {
        names.addAll(when.names());
      }
    }
    return names;
  }

  private void inputs() {
    for (Input input : Inputs.START_UP) {
      Stated value = profile.inputs().of(input);
      boolean said = profile.inputs().says(input);
      if (!said || value.low() < value.high()) {
        String by = said ? "as the profile says" : Inputs.PRACTICE;
        assumes.add(Inputs.sentence(input.key(), value, by));
      }
    }
    assumes.add(
        "A start: drag grows with the square of speed, the engine's own torque from light-off on"
            + " carries it at the self-sustaining speed.");
  }

  private static String percent(double share) {
    return Style.SHOP
        .print(Math.round(1000 * share) / 1000.0, Dimension.SHARE)
        .toLowerCase(Locale.ROOT);
  }
}
