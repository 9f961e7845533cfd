package dev.offtake.system;

import dev.offtake.part.Mode;
import dev.offtake.part.Part;
import dev.offtake.severity.Criterion;
import dev.offtake.severity.Severity;
import dev.offtake.severity.SeverityScale;
import dev.offtake.system.Draft.Sided;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Words;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what a file says about failures: how often ({@code failure rates:}) and how bad ({@code
 * severity:}).
 */
final class FailureReader {
  private static final Pattern RATE =
      Pattern.compile("([0-9]+(?:\\.[0-9]+)?) +per +million +hours");

  private final Problems problems;

  FailureReader(Problems problems) {
    this.problems = problems;
  }

  /**
   * Classes of criteria: {@code a user goes short: II}.
   *
   * @param lines of the section
   */
  SeverityScale scale(Collection<Entry> lines) {
    Map<Criterion, Severity> classes = new EnumMap<>(Criterion.class);
    List<String> known = Arrays.stream(Criterion.values()).map(Criterion::words).toList();
    for (Entry line : lines) {
      String name = line.name().text();
      Optional<Criterion> criterion = Criterion.of(name);
      if (criterion.isEmpty()) {
        problems.add(line.name(), "There is no criterion `" + name + "`", Hint.of(name, known));
        continue;
      }
      String text = line.value() instanceof Words words ? Values.withoutSource(words.text()) : "";
      Optional<Severity> severity = Severity.of(text);
      if (severity.isEmpty()) {
        String wrong = line.value().words() + " is no class of severity";
        problems.add(line.value(), wrong, "Write I, II, III or IV, or catastrophic to minor");
      }
      severity.ifPresent(found -> classes.put(criterion.get(), found));
    }
    return new SeverityScale(classes);
  }

  /**
   * Rates by part or kind and mode, 1/h: {@code mid check valve stuck open: 12 per million hours}.
   *
   * @param lines of the sections, with their sides
   * @param parts of the system
   */
  Map<String, Double> rates(List<Sided> lines, List<Part> parts) {
    Set<String> known = new LinkedHashSet<>();
    for (Part part : parts) {
      for (Mode mode : part.modes()) {
        known.add(part.name() + " " + mode.name());
        known.add(part.kind() + " " + mode.name());
      }
    }
    Map<String, Double> rates = new LinkedHashMap<>();
    for (Sided line : lines) {
      String name = known.contains(line.name()) ? line.name() : line.at().text();
      if (!known.contains(name)) {
        String wrong = "No part or kind fails like `" + line.at().text() + "`";
        problems.add(line.at(), wrong, Hint.of(line.name(), known));
        continue;
      }
      String text = line.value() instanceof Words words ? Values.withoutSource(words.text()) : "";
      Matcher rate = RATE.matcher(text);
      if (rate.matches()) {
        rates.put(name, Double.parseDouble(rate.group(1)) * 1e-6);
      } else {
        String wrong = line.value().words() + " is no rate of failures";
        problems.add(line.value(), wrong, "Write it as `12 per million hours; source`");
      }
    }
    return rates;
  }
}
