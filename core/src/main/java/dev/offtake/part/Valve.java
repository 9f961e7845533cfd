package dev.offtake.part;

import java.util.List;

/** What every kind of valve answers alike; a kind adds what moves it and its words. */
interface Valve extends Part {
  /** Positions that a condition may name. */
  List<String> POSITIONS = List.of("open", "shut", "not shut");

  /** Its body, which carries the parameters. */
  ValveBody body();

  /** What it does and why while nothing holds it. */
  Doing moving(View view);

  @Override
  default Role role() {
    return Role.VALVE;
  }

  @Override
  default List<Leg> legs() {
    return List.of(body().leg());
  }

  @Override
  default List<Parameter> parameters() {
    return body().parameters();
  }

  @Override
  default List<String> observables() {
    return List.of("opening");
  }

  /** Opening that it tells to lights and logic, 0..1; the true one unless something is broken. */
  default double tells(View view) {
    return view.observed(0);
  }

  @Override
  default boolean is(String position, View view) {
    double opening = tells(view);
    return switch (position) {
      case "open" -> Openings.word(opening).equals("open");
      case "shut" -> Openings.word(opening).equals("shut");
      default -> !Openings.word(opening).equals("shut");
    };
  }

  @Override
  default Doing doing(View view) {
    Doing held = ValveBody.held(view);
    if (held != null) {
      return held;
    }
    Doing moving = moving(view);
    double most = view.parameter(ValveBody.MOST_OPENING);
    return most < 1 && view.observed(0) >= most
        ? new Doing("opens no further", moving.word(), moving.why() + "; it opens no further")
        : Openings.onItsWay(moving, view.observed(0));
  }
}
