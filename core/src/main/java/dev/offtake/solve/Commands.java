package dev.offtake.solve;

import dev.offtake.logic.Situation;
import dev.offtake.network.Equations;
import dev.offtake.part.Control;
import dev.offtake.part.Part;
import java.util.ArrayList;
import java.util.List;

/** The controls of a network: set from locks and rules, with the reason of each. */
final class Commands {
  /** Name of the control by which a valve is held by hand. */
  private static final String LOCK = "lock";

  private final Equations equations;
  private final String[][] because;

  Commands(Equations equations) {
    this.equations = equations;
    List<Part> parts = equations.network().parts();
    because = new String[parts.size()][];
    for (int i = 0; i < because.length; i++) {
      because[i] = new String[parts.get(i).controls().size()];
    }
  }

  String[][] because() {
    return because;
  }

  /** Puts every control at its initial value, and locks where the setup says. */
  void reset(Setup setup) {
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      List<Control> controls = parts.get(i).controls();
      for (int k = 0; k < controls.size(); k++) {
        Control control = controls.get(k);
        String lock = setup.locks().getOrDefault(parts.get(i).name(), "");
        boolean locked = control.name().equals(LOCK) && !lock.isEmpty();
        put(i, k, locked ? lockValue(lock) : control.initial(), locked ? lock : "");
      }
    }
  }

  /** Puts what only memory changes back to where it was in an answer. */
  void remember(Solution before) {
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      List<Control> controls = parts.get(i).controls();
      for (int k = 0; k < controls.size(); k++) {
        if (controls.get(k).rules().isEmpty() && !controls.get(k).name().equals(LOCK)) {
          put(i, k, before.control(i, k), "");
        }
      }
    }
  }

  /** Takes all controls over from a state of a network whose first parts have the same names. */
  void take(Solution state) {
    List<Part> parts = state.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      int common =
          Math.min(
              parts.get(i).controls().size(), equations.network().parts().get(i).controls().size());
      for (int k = 0; k < common; k++) {
        put(i, k, state.control(i, k), "");
      }
    }
  }

  /** Locks valves as a setup says and leaves all other controls as they are. */
  void lock(Setup setup) {
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      for (int k = 0; k < parts.get(i).controls().size(); k++) {
        if (parts.get(i).controls().get(k).name().equals(LOCK)) {
          String lock = setup.locks().getOrDefault(parts.get(i).name(), "");
          double free = parts.get(i).controls().get(k).initial();
          put(i, k, lock.isEmpty() ? free : lockValue(lock), lock);
        }
      }
    }
  }

  /** Whether all controls are those of a state, so far as its network has them. */
  boolean areThose(Solution state) {
    double[] controls = equations.evaluation().controls;
    List<Part> parts = equations.network().parts();
    List<Part> others = state.network().parts();
    for (int i = 0; i < Math.min(parts.size(), others.size()); i++) {
      int common = Math.min(parts.get(i).controls().size(), others.get(i).controls().size());
      for (int k = 0; k < common; k++) {
        if (controls[equations.firstControl(i) + k] != state.control(i, k)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Takes all controls over from a state of the same network, with their reasons. */
  void adopt(Solution state) {
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      for (int k = 0; k < parts.get(i).controls().size(); k++) {
        put(i, k, state.control(i, k), state.snapshot().because[i][k]);
      }
    }
  }

  private static double lockValue(String words) {
    return switch (words) {
      case "locked open" -> 1;
      case "locked shut" -> 0;
      case "removed and capped" -> 2;
      default -> throw new IllegalArgumentException("no such lock: " + words);
    };
  }

  private void put(int part, int which, double value, String why) {
    equations.evaluation().controls[equations.firstControl(part) + which] = value;
    because[part][which] = why;
  }

  /**
   * Asks all rules.
   *
   * @return whether a control changed
   */
  boolean decide(Situation situation) {
    boolean changed = false;
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      List<Control> controls = parts.get(i).controls();
      for (int k = 0; k < controls.size(); k++) {
        if (!controls.get(k).rules().isEmpty()) {
          changed |= decide(i, k, controls.get(k), situation);
        }
      }
    }
    return changed;
  }

  private boolean decide(int part, int which, Control control, Situation situation) {
    double before = equations.evaluation().controls[equations.firstControl(part) + which];
    double value = control.initial();
    String why = "";
    for (Control.Rule rule : control.rules()) {
      if (rule.holds(situation)) {
        value = rule.value();
        why = rule.because(situation);
        break;
      }
    }
    put(part, which, value, why);
    return value != before;
  }

  /** Whether asking all rules would change a control. Nothing is changed. */
  boolean wouldDecide(Situation situation) {
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      List<Control> controls = parts.get(i).controls();
      for (int k = 0; k < controls.size(); k++) {
        Control control = controls.get(k);
        double now = equations.evaluation().controls[equations.firstControl(i) + k];
        if (!control.rules().isEmpty() && value(control, situation) != now) {
          return true;
        }
      }
    }
    return false;
  }

  private static double value(Control control, Situation situation) {
    for (Control.Rule rule : control.rules()) {
      if (rule.holds(situation)) {
        return rule.value();
      }
    }
    return control.initial();
  }

  /** The present values, to see whether they come back. */
  List<Double> values() {
    List<Double> values = new ArrayList<>();
    for (double value : equations.evaluation().controls) {
      values.add(value);
    }
    return values;
  }

  /** Names of the controls that differ between two sets of values. */
  List<String> differing(List<Double> one, List<Double> two) {
    List<String> names = new ArrayList<>();
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      for (int k = 0; k < parts.get(i).controls().size(); k++) {
        int at = equations.firstControl(i) + k;
        if (!one.get(at).equals(two.get(at))) {
          names.add(parts.get(i).name());
          break;
        }
      }
    }
    return names;
  }
}
