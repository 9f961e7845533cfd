package dev.offtake.part;

import dev.offtake.logic.Condition;
import java.util.List;
import java.util.stream.Stream;

/**
 * The kind <em>light</em>: lit while a condition holds.
 *
 * @param name full name
 * @param lit 1 while lit
 */
public record Light(String name, Control lit) implements Watcher {
  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "light",
          "A light that is lit while a condition holds.",
          "light",
          List.of(
              Key.of("lit when", Form.CONDITION, "overheat trip is tripped", "When it is lit.")
                  .must()),
          List.of("light", "bulb", "wiring"),
          List.of("on", "off", "lit"),
          Light::of);

  private static final List<Parameter> PARAMETERS = List.of(Held.parameter("bulb"));

  private static Part of(Facts facts) {
    Condition condition = facts.condition("lit when");
    if (condition == null) {
      return new Light(facts.name(), new Control("lit", 0, List.of()));
    }
    return new Light(facts.name(), Commands.onWhen(facts, "lit when", "lit"));
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public List<String> looksAt() {
    return lit.rules().stream()
        .flatMap(rule -> rule.when() == null ? Stream.of() : rule.when().names().stream())
        .distinct()
        .toList();
  }

  @Override
  public List<Parameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public List<Control> controls() {
    return List.of(lit);
  }

  /** What a person sees of it: a bulb that is out is off, whatever its wires carry. */
  @Override
  public boolean is(String position, View view) {
    return position.equals("off") != seen(view);
  }

  /** What its wires carry, which is all that the logic of others knows of it. */
  @Override
  public boolean carries(String position, View view) {
    return position.equals("off") != wired(view);
  }

  private static boolean wired(View view) {
    return view.control(0) != 0;
  }

  private static boolean seen(View view) {
    return Held.value(view.parameter(0), wired(view));
  }

  @Override
  public List<Mode> modes() {
    return List.of(
        Held.dark("bulb out", "bulb", "Its bulb is burnt out: nobody sees that it is lit")
            .perMillionHours(50)
            .inspected(
                Inspection.look("Press the lamp test: it stays dark", Access.FLIGHT_DECK, 1)),
        Held.lit("lit by a wiring fault", "wiring", "A short lights it though nothing asks for it")
            .perMillionHours(3)
            .inspected(Looks.CONTINUITY));
  }

  /** Whether nobody sees it though it is asked to be lit. */
  public boolean dark(View view) {
    return wired(view) && !seen(view);
  }

  @Override
  public Doing doing(View view) {
    String word = seen(view) ? "on" : "off";
    if (seen(view) == wired(view)) {
      return new Doing(word, word, view.because(0));
    }
    String fault = seen(view) ? "a wiring fault lights it; " : "its bulb is out; ";
    return new Doing(word, word, fault + view.because(0));
  }
}
