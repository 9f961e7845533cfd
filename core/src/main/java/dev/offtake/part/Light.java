package dev.offtake.part;

import dev.offtake.logic.Condition;
import java.util.List;

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
          List.of("light"),
          List.of("on", "off", "lit"),
          Light::of);

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
  public List<Parameter> parameters() {
    return List.of();
  }

  @Override
  public List<Control> controls() {
    return List.of(lit);
  }

  @Override
  public boolean is(String position, View view) {
    return position.equals("off") == (view.control(0) == 0);
  }

  @Override
  public Doing doing(View view) {
    String word = view.control(0) == 0 ? "off" : "on";
    return new Doing(word, word, view.because(0));
  }
}
