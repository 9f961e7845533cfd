package dev.offtake.part;

import java.util.List;

/** What every kind of valve answers alike; a kind adds what moves it and its words. */
interface Valve extends Part {
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

  @Override
  default Doing doing(View view) {
    Doing held = ValveBody.held(view);
    return held != null ? held : moving(view);
  }
}
