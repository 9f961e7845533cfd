package dev.offtake.quantity;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the word that was most likely meant.
 *
 * <p>The distance of two words is the least number of letters to add, drop, change or swap with
 * their neighbour (optimal string alignment), upper and lower case alike. A word is offered only
 * when no more than a third of the letters, and at least one, are wrong.
 */
public final class Nearest {
  /** How every mend begins that names the one word that was probably meant. */
  public static final String GUESS = "did you mean ";

  /** Longest text that is compared; nobody mistypes a word of this length. */
  private static final int LONGEST = 80;

  private Nearest() {}

  /**
   * The word nearest to what was written.
   *
   * @param written what was written
   * @param words words that are known; of equals the one that begins alike is taken, then the first
   * @return the nearest word, or nothing when none is near
   */
  public static Optional<String> to(String written, Collection<String> words) {
    String best = "";
    int least = 1 + Math.max(1, written.length() / 3);
    int alike = 0;
    for (String word : words) {
      int distance = distance(written, word);
      int begin = alike(written, word);
      boolean nearer = distance < least || (distance == least && begin > alike && !best.isEmpty());
      if (nearer && distance < word.length()) {
        least = distance;
        alike = begin;
        best = word;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  /** How many letters two words have in common before the first that differs. */
  private static int alike(String one, String other) {
    int length = Math.min(one.length(), other.length());
    int alike = 0;
    while (alike < length && one.regionMatches(true, alike, other, alike, 1)) {
      alike++;
    }
    return alike;
  }

  /**
   * A sentence that mends a misspelt word: the nearest word, else the words to choose from.
   *
   * @param written what was written
   * @param words words that are known
   * @return such as {@code did you mean psig?} or {@code say ON or OFF}
   */
  public static String mend(String written, Collection<String> words) {
    return to(written, words).map(word -> GUESS + word + "?").orElse("say " + or(words));
  }

  /** Joins words as a sentence does: {@code a, b or c}. */
  static String or(Collection<String> words) {
    StringBuilder joined = new StringBuilder();
    int left = words.size();
    for (String word : words) {
      left--;
      joined.append(word).append(left > 1 ? ", " : left == 1 ? " or " : "");
    }
    return joined.toString();
  }

  /**
   * The distance of two words.
   *
   * @param one a word
   * @param other another
   * @return letters to mend, 0 when they differ in case only; very large for texts over 80 letters
   */
  public static int distance(String one, String other) {
    if (one.length() > LONGEST || other.length() > LONGEST) {
      return Integer.MAX_VALUE;
    }
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
