package dev.offtake.solve;

/** Small invented systems, as parts of a file. */
final class Benches {
  private Benches() {}

  /** A supply of 60 psig without flow and 50 psig at 100 lb/min. */
  static String supply(String name, String to) {
    return supply(name, to, 60);
  }

  /** A supply of some psig without flow, 10 psi less at 100 lb/min. */
  static String supply(String name, String to, int psig) {
    return """
      %s:
        kind: supply
        to: %s
        temperature: 400 degF
        table:
          columns: [psig, lb/min]
          rows: [[%d, 0], [%d, 100], [%d, 250]]
    """
        .formatted(name, to, psig, psig - 10, psig - 30);
  }

  static String valve(String name, String path, String more) {
    return part(name, "shutoff valve", "path: " + path, "bore: 2 in", more);
  }

  static String duct(String name, String path) {
    return part(name, "duct", "path: " + path, "bore: 3 in", "length: 60 in");
  }

  static String user(String name, String from, int takes) {
    return part(
        name, "flow user", "takes from: " + from, "takes: " + takes + " lb/min", "needs: 12 psig");
  }

  static String regulator(String name, String path, String holds, int psig) {
    return part(
        name,
        "regulator",
        "path: " + path,
        "bore: 3 in",
        "holds: " + holds + " pressure",
        "set to: " + psig + " psig",
        "droop: 4 psi");
  }

  /** A part with its lines; empty ones are left out. */
  static String part(String name, String kind, String... lines) {
    StringBuilder text = new StringBuilder("  " + name + ":\n    kind: " + kind + "\n");
    for (String line : lines) {
      if (!line.isEmpty()) {
        text.append("    ").append(line).append('\n');
      }
    }
    return text.toString();
  }
}
