package dev.offtake.quantity;

/** The small words of a sentence: article and plural. */
public final class Grammar {
  private Grammar() {}

  /** A word with its article: {@code a duct}, {@code an orifice}. */
  public static String a(String word) {
    boolean vowel = !word.isEmpty() && "aeiouAEIOU".indexOf(word.charAt(0)) >= 0;
    return (vowel ? "an " : "a ") + word;
  }

  /** The same at the start of a sentence. */
  public static String capitalA(String word) {
    String with = a(word);
    return "A" + with.substring(1);
  }

  /**
   * A number of things.
   *
   * @param count how many
   * @param one the thing, such as {@code switch}
   * @return such as {@code 1 switch}, {@code 0 switches}, {@code 4 papers}
   */
  public static String count(long count, String one) {
    if (count == 1) {
      return "1 " + one;
    }
    boolean hisses = one.endsWith("ch") || one.endsWith("sh") || one.endsWith("s");
    return count + " " + one + (hisses ? "es" : "s");
  }
}
