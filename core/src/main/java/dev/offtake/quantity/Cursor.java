package dev.offtake.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Walks through the text of one quantity, one word of its grammar at a time. */
final class Cursor {
  private static final Pattern NUMBER =
      Pattern.compile("(?:[1-9][0-9]{0,2}(?:,[0-9]{3})+(?![0-9])|[0-9]+)?(?:\\.[0-9]+)?");

  private static final Pattern EXPONENT = Pattern.compile("[eE][+-]?[0-9]+");

  /** Where a unit ends: a tolerance, the other end of a range, a next number, a joining word. */
  private static final Pattern END_OF_UNIT =
      Pattern.compile("[+±,;]|\\.\\.|-\\s*[0-9.]|\\s(?=[0-9])|\\s(?:to|of|and|at)(?=\\s|$)");

  private static final Pattern COMMA_NUMBER = Pattern.compile("[0-9.,]+");

  /** Beyond these a number is a slip of the finger, whatever its unit. */
  private static final double LARGEST = 1e12;

  private static final double SMALLEST = 1e-12;

  private final String text;
  private int at;

  Cursor(String text) {
    // Papers set a true minus or a dash where keyboards have a hyphen.
    this.text = text.replace('\u2212', '-').replace('\u2013', '-');
  }

  /** A number and its unit; the unit is empty when none is written. */
  record Amount(double number, String unit, String written) {}

  Amount amount() throws QuantityProblem {
    int start = skip();
    double sign = accept("-") ? -1 : 1;
    if (sign > 0) {
      accept("+");
    }
    return unsigned(start, sign);
  }

  /** An amount whose sign, if any, was read before. */
  Amount unsigned() throws QuantityProblem {
    return unsigned(skip(), 1);
  }

  private Amount unsigned(int start, double sign) throws QuantityProblem {
    double number = sign * number();
    String unit = unit();
    return new Amount(number == 0 ? 0 : number, unit, text.substring(start, at).strip());
  }

  private double number() throws QuantityProblem {
    int start = skip();
    Matcher number = NUMBER.matcher(text).region(start, text.length());
    if (!number.lookingAt() || number.end() == start) {
      throw new QuantityProblem(
          start == text.length() ? "a number is missing" : rest() + " is not a number",
          "write a number and its unit, such as 32 psig");
    }
    at = number.end();
    refuseDecimalComma(start);
    Matcher exponent = EXPONENT.matcher(text).region(at, text.length());
    if (exponent.lookingAt()) {
      at = exponent.end();
    }
    return sane(text.substring(start, at));
  }

  private void refuseDecimalComma(int start) throws QuantityProblem {
    boolean comma = at + 1 < text.length() && text.charAt(at) == ',' && digit(at + 1);
    if (!comma) {
      return;
    }
    Matcher all = COMMA_NUMBER.matcher(text).region(start, text.length());
    String written = all.lookingAt() ? all.group() : rest();
    int last = written.lastIndexOf(',');
    String mended =
        written.substring(0, last).replaceAll("[.,]", "") + "." + written.substring(last + 1);
    throw new QuantityProblem(
        "the comma in " + written + " does not part thousands", "write " + mended);
  }

  private static double sane(String written) throws QuantityProblem {
    double number = Double.parseDouble(written.replace(",", ""));
    boolean lost = number == 0 && written.matches("[^eE]*[1-9].*");
    if (lost || Math.abs(number) > LARGEST || number != 0 && Math.abs(number) < SMALLEST) {
      throw new QuantityProblem(
          written + " is beyond anything that is measured", "check its exponent");
    }
    return number;
  }

  private String unit() {
    Matcher end = END_OF_UNIT.matcher(text).region(at, text.length());
    int start = at;
    at = end.find() ? end.start() : text.length();
    return text.substring(start, at).strip();
  }

  /** Steps over a mark when it comes next. */
  boolean accept(String mark) {
    int start = skip();
    if (text.startsWith(mark, start)) {
      at = start + mark.length();
      return true;
    }
    return false;
  }

  /** Steps over a word when it comes next and ends there. */
  boolean acceptWord(String word) {
    int end = skip() + word.length();
    boolean ends = end >= text.length() || !Character.isLetterOrDigit(text.charAt(end));
    return ends && accept(word);
  }

  boolean atEnd() {
    return skip() == text.length();
  }

  /** What is not read yet. */
  String rest() {
    return text.substring(skip());
  }

  /** Refuses what nobody asked for. */
  void end() throws QuantityProblem {
    if (!atEnd()) {
      throw new QuantityProblem(
          "'" + rest() + "' is left over",
          "write a value and its tolerance only, and a source after a semicolon");
    }
  }

  private boolean digit(int index) {
    char c = text.charAt(index);
    return c >= '0' && c <= '9';
  }

  private int skip() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }
}
