package dev.offtake.system;

import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in the shop's words what a YAML scanner complains about. */
final class YamlComplaint {
  private YamlComplaint() {}

  static void tell(
      String file, MarkedYamlEngineException e, String[] lines, Problems problems) {
    int line = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(1);
    String at = lines[Math.min(line, lines.length) - 1];
    String problem = e.getProblem() == null ? "" : e.getProblem();
    if (at.stripTrailing().matches("\\s*\t.*") || problem.contains("TAB")) {
      problems.add(file, line, "The line is indented with a tab", "Indent with spaces");
    } else if (problem.contains("mapping values are not allowed")) {
      String mend = "Put a value that contains `: ` in quotes, and check the indent";
      problems.add(file, line, "There is a colon too many in this line", mend);
    } else if (problem.contains("unexpected end of stream")) {
      int begun = e.getContextMark().map(mark -> mark.getLine() + 1).orElse(line);
      problems.add(file, begun, "A quote is opened and never closed", "Close the quote");
    } else if (problem.contains("cannot start any token")) {
      String mend = "Put the value in quotes";
      problems.add(file, line, "A value cannot begin with this sign: " + problem, mend);
    } else if (problem.contains("could not find expected ':'")) {
      problems.add(file, line, "A name without its colon", "Write `name: value`");
    } else if (problem.contains("',' or '}'") || problem.contains("',' or ']'")) {
      int begun = e.getContextMark().map(mark -> mark.getLine() + 1).orElse(line);
      problems.add(file, begun, "A bracket is opened and never closed", "Close the bracket");
    } else {
      String mend = "Indent what belongs together by the same number of spaces";
      problems.add(file, line, "The line does not fit what stands above it", mend);
    }
  }
}
