package dev.offtake.logic;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of a condition and the place up to which they are read. */
final class Words {
  /** A parenthesis hugging a word is a group; one inside a word, {@code bar(g)}, is part of it. */
  private static final Pattern WORD =
      Pattern.compile("\\(|\\)|[^\\s()](?:[^\\s()]|\\([^\\s()]*\\))*");

  private static final Set<String> ENDS = Set.of("and", "or", ")");

  private record Word(String text, int start, int end) {}

  private final String text;
  private final List<Word> words = new ArrayList<>();
  private int at;

  Words(String text) {
    this.text = text;
    Matcher matcher = WORD.matcher(text);
    while (matcher.find()) {
      words.add(new Word(matcher.group(), matcher.start(), matcher.end()));
    }
  }

  int at() {
    return at;
  }

  int size() {
    return words.size();
  }

  boolean atEnd() {
    return at == words.size();
  }

  /** Whether the word at an index is a given keyword; false behind the end. */
  boolean is(int index, String keyword) {
    return index < words.size() && words.get(index).text.equalsIgnoreCase(keyword);
  }

  /** Whether a clause ends before the word at an index. */
  boolean clauseEnds(int index) {
    return index >= words.size() || ENDS.contains(words.get(index).text.toLowerCase(Locale.ROOT));
  }

  /** The index at which the clause that is being read ends. */
  int endOfClause() {
    int end = at;
    while (!clauseEnds(end)) {
      end++;
    }
    return end;
  }

  boolean accept(String keyword) {
    if (is(at, keyword)) {
      at++;
      return true;
    }
    return false;
  }

  void moveTo(int index) {
    at = index;
  }

  /** Words from here up to an index, parted by single spaces. */
  String upTo(int end) {
    StringBuilder joined = new StringBuilder();
    for (Word word : words.subList(at, end)) {
      joined.append(joined.isEmpty() ? "" : " ").append(word.text);
    }
    return joined.toString();
  }

  /** The text as it was written, from a word up to the last one read. */
  String since(int start) {
    return text.substring(words.get(start).start, words.get(at - 1).end);
  }

  /** What is not read yet, as it was written. */
  String rest() {
    return atEnd() ? "" : text.substring(words.get(at).start);
  }
}
