package dev.offtake.explain;

import dev.offtake.cause.find.Match;
import dev.offtake.cause.find.MatchedNumber;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Style;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.system.ModelError;
import dev.offtake.system.SystemEditor;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes what a match tells into the text of the system file.
 *
 * <p>A number comes with a band that says the same as its standard deviation: as anything inside a
 * band is alike, the band is √3 standard deviations wide to each side.
 */
public final class MatchFile {
  private static final Pattern WORD = Pattern.compile("[\\p{L}%°\"][\\w/°²³%]*");

  /** What follows the value in a line such as {@code 490 degF for 3 s}. */
  private static final Pattern TAIL = Pattern.compile(" (for|at) .*");

  private static final String MATCHED = "matched to ";

  private final Match match;
  private final String source;

  private MatchFile(Match match, String readings) {
    this.match = match;
    String date = match.readings().date().map(day -> " " + day).orElse("");
    source = MATCHED + readings.replaceAll("[;#]", " ") + date;
  }

  /**
   * The text with the numbers that the readings tell, well or partly, and the model error.
   *
   * @param match what was told
   * @param text of the system file
   * @param readings name of the file of the readings; {@code readings} for ones that were typed
   */
  public static String text(Match match, String text, String readings) {
    MatchFile file = new MatchFile(match, readings);
    SystemEditor editor = new SystemEditor(text, match.system().sides());
    for (MatchedNumber number : match.worthWriting()) {
      editor.set(number.number().part(), number.statement().key(), file.line(number));
    }
    if (match.pressure().told() || match.temperature().told()) {
      editor.modelError(file.modelError());
    }
    return editor.text();
  }

  private String line(MatchedNumber number) {
    Stated stated = number.statement().stated();
    Unit unit = unit(stated);
    Matcher tail = TAIL.matcher(stated.text());
    return value(number, unit) + (tail.find() ? tail.group() : "") + "; " + source + was(stated);
  }

  private static String was(Stated stated) {
    boolean matched = stated.source().isEmpty() || stated.source().startsWith(MATCHED);
    String from = matched ? "" : " from " + stated.source();
    return " (was " + (stated.text() + from).replaceAll("[();#]", " ").strip() + ")";
  }

  /** The value with its band, in the unit of the file: {@code 41.2 psig +/- 0.9}. */
  private static String value(MatchedNumber number, Unit unit) {
    double band = number.halfBand() / unit.factor();
    int decimals = decimals(band);
    String points = unit.dimension() == Dimension.SHARE ? " points" : "";
    String value = round(unit.fromSi(number.value()), decimals);
    boolean below = unit.offset() == 0 && unit.fromSi(number.value()) < band;
    boolean positive = number.statement().stated().low() >= 0;
    String wide = round(band, decimals);
    String tolerance =
        below && positive ? "+" + wide + points + " -" + value + points : "+/- " + wide + points;
    return value + " " + unit.symbol() + " " + tolerance;
  }

  /** As many as show two figures of a band. */
  private static int decimals(double band) {
    return Math.max(0, Math.min(9, 1 - (int) Math.floor(Math.log10(band))));
  }

  private static String round(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** The unit in which the file states a value. */
  private static Unit unit(Stated stated) {
    Matcher words = WORD.matcher(stated.text());
    while (words.find()) {
      Optional<Unit> unit = Units.find(words.group(), stated.dimension());
      if (unit.isPresent()) {
        return unit.get();
      }
    }
    String usual = Style.SHOP.unit(stated.dimension());
    return Units.find(usual, stated.dimension()).orElseThrow();
  }

  private String modelError() {
    ModelError now = match.modelError();
    ModelError before = match.system().modelError();
    StringBuilder value = new StringBuilder("{");
    if (match.pressure().told() || before.statedPressure()) {
      String percent = round(100 * now.pressure(), decimals(100 * now.pressure()));
      value.append("pressure: ").append(percent).append(" %");
      value.append(sourced(match.pressure().told(), before));
    }
    if (match.temperature().told() || before.statedTemperature()) {
      String hot = round(1.8 * now.temperature(), decimals(1.8 * now.temperature()));
      value.append(value.length() > 1 ? ", " : "").append("temperature: ").append(hot);
      value.append(" degF").append(sourced(match.temperature().told(), before));
    }
    return value.append('}').toString();
  }

  private String sourced(boolean told, ModelError before) {
    String from = told ? source : before.source();
    return from.isEmpty() ? "" : "; " + from.replaceAll("[,\\[\\]{}:]", " ");
  }
}
