package dev.offtake.system;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects problems, each told once even where a line is unfolded for several sides. */
final class Problems {
  /** Most problems that are told; what follows is usually an echo of the first ones. */
  static final int MOST = 50;

  private final List<Problem> found = new ArrayList<>();
  private final Set<String> told = new HashSet<>();
  private final List<String> sides = new ArrayList<>();

  /** From now on messages that differ only by these words are the same. */
  void unfold(List<String> names) {
    sides.addAll(names);
  }

  void add(Item at, String wrong, String mend) {
    add(at.file(), at.line(), wrong, mend);
  }

  void add(String file, int line, String wrong, String mend) {
    if (told.add(file + ":" + line + ":" + withoutSides(wrong))) {
      found.add(new Problem(file, line, full(wrong), full(mend)));
    }
  }

  boolean none() {
    return found.isEmpty();
  }

  List<Problem> sorted() {
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
