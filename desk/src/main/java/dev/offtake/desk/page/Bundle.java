package dev.offtake.desk.page;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The modules of the page as one classic script, for a file that is opened without a server, from
 * which a browser loads no modules.
 *
 * <p>It knows the few forms that the page's own modules use, and refuses others: imports of names,
 * one statement each; exported functions, classes, constants and variables. Each module becomes a
 * function that is called once and returns what it exports; an exported variable is read where it
 * is used, so that it stays alive.
 */
final class Bundle {
  private static final Pattern IMPORT =
      Pattern.compile("(?m)^import\\s*\\{([^}]*)}\\s*from\\s*'\\./([\\w-]+)\\.js';[ \\t]*\\n?");

  private static final Pattern EXPORT =
      Pattern.compile(
          "(?m)^export\\s+((?:async\\s+)?(?:function\\*?|class)|const|let)\\s+([\\w$]+)");

  private static final Pattern OTHER = Pattern.compile("(?m)^(?:import\\s+[\\w{*'\"]|export\\b).*");

  private final UnaryOperator<String> source;
  private final Set<String> begun = new LinkedHashSet<>();
  private final Map<String, Set<String>> variables = new HashMap<>();
  private final StringBuilder out = new StringBuilder();

  private Bundle(UnaryOperator<String> source) {
    this.source = source;
  }

  /**
   * Puts modules together.
   *
   * @param first name of the module to begin with, without its ending
   * @param last the module that ends it
   * @param between statements that run between the two
   * @param source gives the text of a module
   * @return statements for the body of one function, in which module {@code a-b} is the object
   *     {@code module_a_b}
   */
  static String of(String first, String last, String between, UnaryOperator<String> source) {
    Bundle bundle = new Bundle(source);
    bundle.add(first);
    bundle.out.append(between);
    bundle.add(last);
    return bundle.out.toString();
  }

  private void add(String name) {
    if (!begun.add(name)) {
      return;
    }
    String text = source.apply(name);
    StringBuilder taken = new StringBuilder();
    String body = IMPORT.matcher(text).replaceAll("");
    Matcher imports = IMPORT.matcher(text);
    while (imports.find()) {
      String from = imports.group(2);
      add(from);
      for (String each : imports.group(1).split(",", -1)) {
        String[] names = each.strip().split("\\s+as\\s+", -1);
        String own = names[names.length - 1];
        if (variables.getOrDefault(from, Set.of()).contains(names[0])) {
          body = alive(body, own, object(from) + "." + names[0]);
        } else if (!own.isEmpty()) {
          taken.append("const ").append(own).append(" = ").append(object(from));
          taken.append('.').append(names[0]).append(";\n");
        }
      }
    }
    module(name, body, taken);
  }

  /** A variable of another module at each place where it is used. */
  private static String alive(String body, String own, String there) {
    return body.replaceAll("(?<![\\w$./'\"`])" + Pattern.quote(own) + "(?=\\.)", there);
  }

  private void module(String name, String text, StringBuilder taken) {
    StringBuilder given = new StringBuilder();
    Matcher exports = EXPORT.matcher(text);
    while (exports.find()) {
      String what = exports.group(2);
      given.append("get ").append(what).append("() { return ").append(what).append("; }, ");
      if (exports.group(1).equals("let")) {
        variables.computeIfAbsent(name, key -> new LinkedHashSet<>()).add(what);
      }
    }
    String body = EXPORT.matcher(text).replaceAll("$1 $2");
    Matcher other = OTHER.matcher(body);
    if (other.find()) {
      throw new IllegalStateException(name + ".js: " + other.group());
    }
    out.append("const ").append(object(name)).append(" = (() => {\n").append(taken).append(body);
    out.append("\nreturn { ").append(given).append("};\n})();\n");
  }

  private static String object(String name) {
    return "module_" + name.replace('-', '_');
  }
}
