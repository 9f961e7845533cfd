package dev.offtake.explain;

import dev.offtake.stability.Stability;
import java.util.List;

/**
 * What a person is told about one solved state.
 *
 * @param asked what was asked
 * @param solved whether there is an answer
 * @param headline the answer in one or two sentences each
 * @param why what each valve does
 * @param air air at sources, points and users
 * @param room what is left until a user goes short
 * @param memory what was remembered or tripped, in sentences
 * @param nextChange the next change as power comes up; empty when none was found
 * @param stability whether the state stays after a small upset
 * @param balance how well air and heat balance
 * @param caution the caution
 */
public record StateAnswer(
    Asked asked,
    boolean solved,
    List<String> headline,
    List<Why> why,
    List<Air> air,
    List<Room> room,
    List<String> memory,
    String nextChange,
    Stability stability,
    String balance,
    String caution) {

  /** The caution under every answer. */
  public static final String CAUTION =
      "Advice, not approval. Hot air under pressure: depressurise before disconnecting, and prove"
          + " it with a gauge. The approved manual, local rules and the licensed signature rule.";

  /** Keeps its lists. */
  public StateAnswer {
    headline = List.copyOf(headline);
    why = List.copyOf(why);
    air = List.copyOf(air);
    room = List.copyOf(room);
    memory = List.copyOf(memory);
  }

  /** What a valve does and why. */
  public record Why(String part, String word, String because) {}

  /**
   * Air at a place; what is not meant there is NaN.
   *
   * @param name source, point or user
   * @param gaugePressure Pa above ambient
   * @param temperature K
   * @param flow kg/s
   * @param note such as where the air comes from
   */
  public record Air(
      String name, double gaugePressure, double temperature, double flow, String note) {}

  /** What is left: a name and a sentence. */
  public record Room(String name, String says) {}
}
