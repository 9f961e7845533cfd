package dev.offtake.system;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects problems, each told once even where a line is unfolded for several sides. */
public final class Problems {
  /** Most problems that are told; what follows is usually an echo of the first ones. */
  public static final int MOST = 50;

  private final List<Problem> found = new ArrayList<>();
  private final Set<String> told = new HashSet<>();
  private final List<String> sides = new ArrayList<>();

  /** From now on messages that differ only by these words are the same. */
  void unfold(List<String> names) {
    sides.addAll(names);
  }

  /** Notes what is wrong with a piece of a file, and how to mend it. */
  public void add(Item at, String wrong, String mend) {
    add(at.file(), at.line(), wrong, mend);
  }

  /** Notes what is wrong at a line of a file, from 1, and how to mend it. */
  public void add(String file, int line, String wrong, String mend) {
    if (told.add(file + ":" + line + ":" + withoutSides(wrong))) {
      found.add(new Problem(file, line, full(wrong), full(mend)));
    }
  }

  /** Whether nothing is wrong so far. */
  public boolean none() {
    return found.isEmpty();
  }

  /** Problems by file and line, at most {@value #MOST}. */
  public List<Problem> sorted() {
    return found.stream().sorted(Problem.ORDER).limit(MOST).toList();
  }

  private String withoutSides(String text) {
    String plain = text;
    for (String side : sides) {
      plain = plain.replaceAll("\\b" + java.util.regex.Pattern.quote(side) + " ", "");
    }
    return plain;
  }

  /** A sentence, without the full stop that the printed form adds itself. */
  private static String full(String sentence) {
    String plain = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    return plain.isEmpty() ? plain : Character.toUpperCase(plain.charAt(0)) + plain.substring(1);
  }
}
