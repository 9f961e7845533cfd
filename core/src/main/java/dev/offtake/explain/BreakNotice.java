package dev.offtake.explain;

import dev.offtake.quantity.Style;
import dev.offtake.study.Notice;
import dev.offtake.study.Sign;
import dev.offtake.study.Stretch;
import java.util.List;
import java.util.Optional;

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
    Sign.Verdict verdict = Notice.best(signs, false);
    String best = BreakSigns.best(signs, false).map(words::withPlace).orElse("");
    return new BreakAnswer.Noticed(
        at.power(), BreakSigns.word(verdict), join(best, port(signs, verdict)), signs);
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
    List<CurveAnswer.Shows> shows =
        stretch.best().stream()
            .map(best -> new CurveAnswer.Shows(best.at(), shown(best.sign())))
            .toList();
    String none =
        stretch.verdict().isPresent()
            ? nothing
            : "the healthy or the broken system has no answer here";
    return new CurveAnswer.Noticed(
        stretch.from(),
        stretch.to(),
        stretch.verdict().map(BreakSigns::word).orElse(NO_ANSWER),
        shows,
        shows.isEmpty() ? none : "");
  }

  private String shown(Sign sign) {
    return sign.atPort()
        ? "plain only at the " + sign.seen() + ": " + words.says(sign)
        : words.withPlace(sign);
  }

  /** What only a test gauge shows, where that is more than the others show. */
  private String port(List<Sign> signs, Sign.Verdict others) {
    Optional<Sign> best = BreakSigns.best(signs, true);
    boolean plain = best.isPresent() && best.get().verdict() == Sign.Verdict.PLAIN;
    if (!plain || others == Sign.Verdict.PLAIN) {
      return others == Sign.Verdict.HIDDEN ? nothing : "";
    }
    return shown(best.get());
  }

  private static String join(String best, String port) {
    return best.isEmpty() || port.isEmpty() ? best + port : best + "; " + port;
  }
}
