package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import dev.offtake.study.Stretch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Who would notice, power by power. */
final class BreakNotice {
  /** Stands for a verdict where there is no answer. */
  private static final String NO_ANSWER = "no answer";

  private final BreakSigns words;
  private final String nothing;

  private BreakNotice(boolean moving, Style style) {
    nothing = moving ? "nothing tells at rest; watch it while power moves" : "nothing tells";
    words = new BreakSigns(style);
  }

  /**
   * A row for each power.
   *
   * @param powers states at the powers
   * @param moving whether something broken shows only while power moves
   * @param style units to speak in
   */
  static List<BreakAnswer.Noticed> of(List<AtPower> powers, boolean moving, Style style) {
    BreakNotice notice = new BreakNotice(moving, style);
    return powers.stream().map(notice::row).toList();
  }

  private BreakAnswer.Noticed row(AtPower at) {
    if (!at.solved()) {
      String whose = at.healthy().solved() ? "broken" : "healthy";
      return new BreakAnswer.Noticed(
          at.power(), NO_ANSWER, "the " + whose + " system has no answer here", List.of());
    }
    List<Sign> signs = at.signs();
    String verdict = BreakSigns.word(Notice.best(signs, false));
    return new BreakAnswer.Noticed(at.power(), verdict, says(signs), signs);
  }

  /** The best sign in words, with what only a test gauge shows where that is more. */
  private String says(List<Sign> signs) {
    String best = BreakSigns.best(signs, false).map(words::withPlace).orElse("");
    return join(best, port(signs, Notice.best(signs, false)));
  }

  /**
   * The stretches of a curve in words.
   *
   * @param stretches by rising value
   * @param moving whether something broken shows only while power moves
   * @param style units to speak in
   */
  static List<CurveAnswer.Noticed> along(List<Stretch> stretches, boolean moving, Style style) {
    BreakNotice notice = new BreakNotice(moving, style);
    return stretches.stream().map(notice::stretch).toList();
  }

  private CurveAnswer.Noticed stretch(Stretch stretch) {
    if (stretch.verdict().isEmpty()) {
      String none = "the healthy or the broken system has no answer here";
      return noticed(stretch, NO_ANSWER, OptionalDouble.empty(), none);
    }
    String says = says(stretch.signs());
    boolean shows = !says.equals(nothing);
    return noticed(
        stretch,
        BreakSigns.word(stretch.verdict().get()),
        shows ? OptionalDouble.of(stretch.at()) : OptionalDouble.empty(),
        says);
  }

  private static CurveAnswer.Noticed noticed(
      Stretch stretch, String verdict, OptionalDouble at, String says) {
    return new CurveAnswer.Noticed(stretch.from(), stretch.to(), verdict, at, says);
  }

  /** What only a test gauge shows, where that is more than the others show. */
  private String port(List<Sign> signs, Sign.Verdict others) {
    Optional<Sign> best = BreakSigns.best(signs, true);
    boolean plain = best.isPresent() && best.get().verdict() == Sign.Verdict.PLAIN;
    if (!plain || others == Sign.Verdict.PLAIN) {
      return others == Sign.Verdict.HIDDEN ? nothing : "";
    }
    Sign sign = best.get();
    return "plain only at the " + sign.seen() + ": " + words.says(sign);
  }

  private static String join(String best, String port) {
    return best.isEmpty() || port.isEmpty() ? best + port : best + "; " + port;
  }
}
