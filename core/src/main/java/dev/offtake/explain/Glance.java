package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.solve.Solution;
import dev.offtake.study.Notice;
import java.util.List;

/**
 * What a person is told about one solved state as far as that needs no other state: quick enough to
 * follow a moving hand. {@link StateInquiry} tells what lies ahead and whether the state is steady
 * besides.
 *
 * @param asked what was asked
 * @param lead the one sentence or two that stand above all others
 * @param headline the answer in sentences, as {@link StateAnswer#headline} has it
 * @param places one for each point of the network
 * @param acts one for each part of the network
 * @param panel what gauges and lights show
 * @param room what is left until a user goes short
 * @param memory what was remembered or tripped, in sentences
 * @param balance how well air and heat balance
 */
public record Glance(
    Asked asked,
    String lead,
    List<String> headline,
    List<Place> places,
    List<Act> acts,
    Panel panel,
    List<StateAnswer.Room> room,
    List<String> memory,
    String balance) {
  /** Keeps its lists. */
  public Glance {
    headline = List.copyOf(headline);
    places = List.copyOf(places);
    acts = List.copyOf(acts);
    room = List.copyOf(room);
    memory = List.copyOf(memory);
  }

  /**
   * Where the air of a point comes from.
   *
   * @param says in words, with shares: {@code from left high tap}, {@code still}
   * @param source what gives most of it; empty where the air is still
   * @param fed whether air flows to it
   */
  public record Place(String says, String source, boolean fed) {}

  /**
   * What a part does and why.
   *
   * @param regime short and stable name
   * @param word as printed beside its name
   * @param why the inequality, with what runs backwards
   */
  public record Act(String regime, String word, String why) {}

  /**
   * Tells a state.
   *
   * @param question what was asked
   * @param solution its state; {@link Solution#solved()}
   * @param style units to speak in
   */
  public static Glance of(Question question, Solution solution, Style style) {
    return StateExplainer.glance(question, solution, style);
  }

  /**
   * What stands above all others when something is broken: the power, what is broken, and its
   * largest consequence.
   *
   * @param question about the broken system
   * @param healthy the healthy state, solved
   * @param broken the broken one, solved
   * @param style units to speak in
   */
  public static String lead(Question question, Solution healthy, Solution broken, Style style) {
    Compared compared = new Compared(healthy, broken, style);
    String headline =
        BreakHeadline.of(compared, question.faults(), Notice.between(healthy, broken));
    return LeadSentence.broken(question, headline, style);
  }

  /**
   * Why there is no answer, one sentence.
   *
   * @param solution what was found instead of a state
   */
  public static String trouble(Solution solution) {
    return StateExplainer.trouble(solution);
  }
}
