package dev.offtake.network;

import dev.offtake.logic.Situation;
import dev.offtake.part.Control;
import dev.offtake.part.Part;
import java.util.List;
import java.util.Map;

/** Sets the controls of equations by their rules, from switches alone: nothing tripped. */
public final class Ruled {
  private Ruled() {}

  /** Gives each control the value of its first rule that holds. */
  public static void set(Equations equations, Map<String, String> positions) {
    Situation switches = new Switches(positions);
    List<Part> parts = equations.network().parts();
    for (int i = 0; i < parts.size(); i++) {
      List<Control> controls = parts.get(i).controls();
      for (int k = 0; k < controls.size(); k++) {
        double value = value(controls.get(k), switches);
        equations.evaluation().controls[equations.firstControl(i) + k] = value;
      }
    }
  }

  private static double value(Control control, Situation switches) {
    return control.rules().stream()
        .filter(rule -> rule.when() == null || rule.when().holds(switches))
        .findFirst()
        .map(Control.Rule::value)
        .orElse(control.initial());
  }

  private record Switches(Map<String, String> positions) implements Situation {
    @Override
    public boolean is(String subject, String position) {
      return position.equals(positions.get(subject));
    }

    @Override
    public double value(String subject) {
      return Double.NaN;
    }

    @Override
    public double ambientPressure() {
      return 101325;
    }
  }
}
