package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.ChangeWords;
import dev.offtake.explain.Glance;
import dev.offtake.part.Light;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.Trip;
import dev.offtake.study.Curve;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Questions for an apprentice, made from what happens: who feeds now, what a valve does now, who
 * trips. The right answer and its reason are the model's.
 */
final class Guesses {
  private static final List<String> VALVE = List.of("shut", "part open", "wide open");

  /** A valve open by less is called shut, and by less than all of it part open. */
  private static final double STOP = 0.01;

  private static final Set<String> MOVES =
      Set.of("regulating", "controlling", "partly open", "relieving");

  private final BleedSystem system;

  Guesses(BleedSystem system) {
    this.system = system;
  }

  /**
   * A question about what happened.
   *
   * @param changes what happened
   * @param moment the state after it
   * @return empty where there is nothing to guess
   */
  Optional<ObjectNode> of(List<Curve.Change> changes, Moment moment) {
    Glance glance = moment.glance();
    if (glance == null) {
      return Optional.empty();
    }
    for (Curve.Change change : changes) {
      Optional<ObjectNode> guess =
          switch (change.what()) {
            case LEADER -> leader(change, moment, glance);
            case PART -> part(change, moment, glance);
            case TABLE, DONE -> Optional.empty();
          };
      if (guess.isPresent()) {
        return guess;
      }
    }
    return Optional.empty();
  }

  private Optional<ObjectNode> leader(Curve.Change change, Moment moment, Glance glance) {
    List<String> sources =
        system.parts().stream()
            .filter(part -> part.role() == Role.SOURCE && !part.kind().equals("fan tap"))
            .map(Part::name)
            .filter(name -> change.subject().isEmpty() || name.startsWith(change.subject() + " "))
            .toList();
    if (change.after().isEmpty() || sources.size() < 2 || !sources.contains(change.after())) {
      return Optional.empty();
    }
    String whom = change.subject().isEmpty() ? "the system" : "the " + change.subject() + " side";
    int part = moment.solution().network().part(change.after());
    String because = part < 0 ? "" : glance.acts().get(part).why();
    return Optional.of(
        guess(
            "Which gives most of the air to " + whom + " now?", sources, change.after(), because));
  }

  private Optional<ObjectNode> part(Curve.Change change, Moment moment, Glance glance) {
    int number = moment.solution().network().part(change.subject());
    if (number < 0) {
      return Optional.empty();
    }
    Part part = moment.solution().network().parts().get(number);
    String because = glance.acts().get(number).why();
    if (part.role() == Role.VALVE) {
      String right = stands(moment, number, part);
      return Optional.of(
          guess("How does the " + part.name() + " stand now?", VALVE, right, because));
    }
    if (part instanceof Trip && change.after().equals("tripped")) {
      List<String> trips = names(Trip.class);
      return Optional.of(guess("Which trips here?", trips, part.name(), because));
    }
    if (part instanceof Light && change.after().equals("on")) {
      return Optional.of(guess("Which light comes on?", names(Light.class), part.name(), because));
    }
    if (part.role() == Role.USER) {
      String right = ChangeWords.says(change);
      List<String> choices = List.of(right, "nothing changes for it");
      return Optional.of(
          guess("What happens to the " + part.name() + "?", choices, right, because));
    }
    return Optional.empty();
  }

  private static String stands(Moment moment, int number, Part part) {
    int opening = part.observables().indexOf("opening");
    double open = moment.solution().view(number, moment.style()).observed(opening);
    // One that has just begun to open stands at its stop, and is about to leave it.
    boolean begun = MOVES.contains(moment.solution().doing(number, moment.style()).regime());
    if (open <= STOP && !begun) {
      return VALVE.get(0);
    }
    return VALVE.get(open >= 1 - STOP ? 2 : 1);
  }

  private List<String> names(Class<? extends Part> kind) {
    List<String> names = new ArrayList<>();
    system.parts().stream().filter(kind::isInstance).map(Part::name).forEach(names::add);
    names.add("none");
    return names;
  }

  private static ObjectNode guess(String ask, List<String> choices, String right, String because) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("ask", ask);
    ArrayNode all = node.putArray("choices");
    choices.forEach(all::add);
    node.put("right", choices.indexOf(right));
    node.put("because", because);
    return node;
  }
}
