package dev.offtake.explain;

import dev.offtake.cause.find.Advice;
import dev.offtake.cause.find.Check;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Ranked;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.List;

/** The answer of {@code find} in one or two sentences. */
final class FindHeadline {
  /** The parts that are named carry so much of what their group has. */
  private static final double CARRIES = 0.85;

  private static final int NAMED = 3;
  private static final double LIKELY = 0.5;
  private static final String WHICH = ": your readings cannot tell which.";

  private final FindView view;
  private final Found found;
  private final Style style;

  FindHeadline(FindView view, Style style) {
    this.view = view;
    found = view.found();
    this.style = style;
  }

  List<String> sentences() {
    if (!found.explained()) {
      return unexplained();
    }
    List<String> sentences = new ArrayList<>();
    if (view.sound()) {
      sentences.add("Nothing wrong, or something that hides in these readings.");
      against(sentences);
      sentences.add(found.advice().stop() ? "" : next(List.of()));
      return sentences;
    }
    List<String> parts = lead(sentences);
    sentences.add(next(parts));
    return sentences;
  }

  /** Lights and positions that a sound system does not show. */
  private void against(List<String> sentences) {
    for (Found.Look look : found.looks()) {
      FindValue value = new FindValue(look, "", style);
      if (value.against()) {
        sentences.add("But " + value.name() + " " + value.read() + " does not go with that.");
      }
    }
  }

  private List<String> unexplained() {
    List<String> sentences = new ArrayList<>();
    sentences.add("Nothing on the list explains your readings.");
    if (!found.ranked().isEmpty()) {
      String nearest = new FindWords(style).cause(found.ranked().get(0));
      sentences.add("The nearest is " + nearest + ", and it does not fit.");
    }
    sentences.add("Read again before anything is taken off.");
    return sentences;
  }

  /** What leads; tells the parts that are named. */
  private List<String> lead(List<String> sentences) {
    if (view.lettered().isEmpty() || found.none() > view.lettered().get(0).chance()) {
      sentences.add("More likely something that is not on the list than any failure that is.");
      return List.of();
    }
    Found.Group group = view.lettered().get(0);
    List<String> parts = view.parts(group, CARRIES);
    String first = group.chance() < LIKELY ? "No clear answer. Perhaps the " : "The ";
    if (parts.size() == 1) {
      sentences.add(first + parts.get(0) + one(group));
    } else if (parts.size() <= NAMED) {
      sentences.add(first + FindWords.list(the(parts), NAMED, "or") + WHICH);
    } else {
      int all = view.parts(group, 1).size();
      String some = group.chance() < LIKELY ? "No clear answer. One of " : "One of ";
      sentences.add(some + group.members().size() + " failures of " + all + " parts" + WHICH);
      sentences.add("First comes the " + parts.get(0) + ", then the " + parts.get(1) + ".");
    }
    return parts;
  }

  /** The first without its article: it follows one. */
  private static List<String> the(List<String> parts) {
    List<String> words = new ArrayList<>();
    for (String part : parts) {
      words.add(words.isEmpty() ? part : "the " + part);
    }
    return words;
  }

  private String one(Found.Group group) {
    Ranked lead = found.ranked().get(group.members().get(0));
    boolean likely = lead.chance() >= CARRIES * group.chance();
    return likely && lead.cause().faults().size() == 1
        ? ": " + new FindWords(style).mode(lead) + "."
        : "; how it has failed your readings cannot tell.";
  }

  private String next(List<String> parts) {
    if (found.advice().stop()) {
      return found.advice().order().isEmpty()
          ? ""
          : "No check is worth its time: look at the " + first() + " first.";
    }
    Advice.Offer offer = found.advice().offers().get(0);
    String minutes = FindWords.minutes(offer.minutes());
    boolean look = offer.check() instanceof Check.Look;
    boolean tells = parts.size() > 1 && parts.size() <= NAMED && parted(offer, parts);
    String check = (look ? "look of " + minutes + " minutes" : minutes + "-minute check");
    return "One " + check + (tells ? " can." : " tells more.");
  }

  /** Whether a check shows each of some parts in bands of its own. */
  private boolean parted(Advice.Offer offer, List<String> parts) {
    if (!(offer.check() instanceof Check.Run run)) {
      return parts.size() == 2 && offer.check() instanceof Check.Look;
    }
    List<FindBands.Band> taken = new ArrayList<>();
    List<FindBands.Band> bands = new FindBands(run.instrument(), style).of(offer.expects());
    for (String part : parts) {
      List<FindBands.Band> own =
          bands.stream()
              .filter(band -> band.causes().stream().anyMatch(number -> is(number, part)))
              .toList();
      if (own.isEmpty() || own.stream().anyMatch(band -> taken.stream().anyMatch(band::meets))) {
        return false;
      }
      taken.addAll(own);
    }
    return true;
  }

  private boolean is(int number, String part) {
    return number >= 0 && FindWords.parts(found.ranked().get(number).cause()).equals(part);
  }

  private String first() {
    Advice.Unit unit = found.advice().order().get(0);
    return FindWords.unit(found.system(), unit.part(), unit.unit());
  }
}
