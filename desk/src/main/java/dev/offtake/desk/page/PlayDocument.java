package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.explain.Glance;
import dev.offtake.explain.PlayAnswer;
import dev.offtake.explain.PlayInquiry;
import dev.offtake.explain.Question;
import dev.offtake.explain.StateAnswer;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileRead;
import dev.offtake.profile.ProfileReader;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.system.BleedSystem;
import dev.offtake.time.Played;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;

/** A profile that was played, as the page is sent it: a state every so often, and the story. */
final class PlayDocument {
  /** Most states that are sent; a longer profile has them further apart. */
  private static final int PICTURES = 240;

  /** Shortest time between two of them, s. */
  private static final double STRIDE = 0.25;

  /** Pressure to which trapped air must fall, Pa above the air outside (1 psi). */
  private static final double BLED = 6894.757293168361;

  private final BleedSystem system;
  private final Question question;
  private final Style style;
  private final Shows shows;

  private PlayDocument(BleedSystem system, Question question, Style style) {
    this.system = system;
    this.question = question;
    this.style = style;
    shows = new Shows(style);
  }

  /**
   * Plays.
   *
   * @param system what it is played on
   * @param file name of the profile, for what is told of it
   * @param text what stands in it
   * @param style units of the words
   * @throws Refusal when the profile cannot be read or played; says where
   */
  static ObjectNode of(BleedSystem system, String file, String text, Style style) {
    ProfileRead read = ProfileReader.readText(file, text, system);
    if (read.profile().isEmpty()) {
      String first = read.problems().isEmpty() ? file : read.problems().get(0).toString();
      throw new Refusal(Refusal.BAD, first, "mend the profile and play it again");
    }
    try {
      Question question = Question.of(system, "", "", "", List.of());
      return new PlayDocument(system, question, style).all(read.profile().get());
    } catch (QuantityProblem problem) {
      throw Refusal.of(problem);
    }
  }

  private ObjectNode all(Profile profile) throws QuantityProblem {
    PlayInquiry.Request request = new PlayInquiry.Request(List.of(), List.of(), "", BLED);
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode frames = root.putArray("frames");
    Consumer<Played> show = played -> frames(frames, played);
    PlayAnswer answer = PlayInquiry.answerWith(system, profile, request, style, show);
    root.put("title", profile.title()).put("about", profile.about());
    answer.headline().forEach(root.putArray("notes")::add);
    if (!answer.done()) {
      root.put("trouble", answer.trouble());
    }
    story(root.putArray("events"), answer);
    return root.put("caution", StateAnswer.CAUTION);
  }

  private void frames(ArrayNode frames, Played played) {
    if (played.end() == Played.End.NO_START) {
      return;
    }
    double stride = Math.max(STRIDE, played.seconds() / PICTURES);
    for (double t = 0; t < played.seconds(); t += stride) {
      frame(frames.addObject(), t, played.at(t));
    }
    frame(frames.addObject(), played.seconds(), played.at(played.seconds()));
  }

  private static void story(ArrayNode events, PlayAnswer answer) {
    for (PlayAnswer.Told told : answer.story()) {
      events.addObject().put("t", told.at()).put("done", told.done()).put("says", told.says());
    }
  }

  /** Who feeds now, with the time in the place of the power that was asked. */
  private String lead(Glance glance, double seconds) {
    String told = glance.lead().substring(question.called().length());
    return String.format(Locale.ROOT, "At %.1f s", seconds) + told;
  }

  private void frame(ObjectNode node, double seconds, Solution solution) {
    node.put("t", seconds).put("core", solution.conditions().core());
    Glance glance = Glance.of(question, solution, style);
    ObjectNode state = node.putObject("state").put("solved", true);
    ArrayNode headline = state.putArray("headline").add(lead(glance, seconds));
    glance.headline().forEach(headline::add);
    new PointNodes(solution, null, shows).fill(state.putArray("points"), glance);
    new PartNodes(solution, null, shows, Map.of()).fill(state, glance, null);
    PanelNodes.fill(state, glance.panel(), null);
  }
}
