package dev.offtake.explain;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsRead;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.cause.find.Finder;
import dev.offtake.cause.find.Found;
import dev.offtake.cause.find.Prior;
import dev.offtake.cause.find.RecordedBench;
import dev.offtake.part.Kinds;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import dev.offtake.study.Fault;
import dev.offtake.study.FaultReader;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What {@code find} prints, on one small invented engine. */
class FindDocsTest {
  private static final Path JSON_DOCS = Path.of("../docs/json-find.md");
  private static final Path DOCS = Path.of("../docs/find.md");
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);
  private static final String ENGINE =
      """
      offtake: 1
      title: One engine
      power settings:
        idle: {core: 62 %, fan: 24 %, holds: physical}
        high: {core: 85 %, fan: 60 %, holds: physical}
      switches:
        valve switch: [ON, OFF]
      parts:
        low tap: {kind: compressor tap, to: low duct, bore: "3 in; common practice, no source", table: {columns: [core %, psig, degF], rows: [[62, 8, 188], [99, 103, 610]]}}
        high tap: {kind: compressor tap, to: high duct, bore: 2.4 in, table: {columns: [core %, psig, degF], rows: [[62, 26, 322], [99, 285, 950]]}}
        check valve: {kind: check valve, path: low duct -> duct, bore: 3 in}
        high valve: {kind: regulator, path: high duct -> duct, bore: 2.5 in, holds: duct pressure, set to: 32 psig, shut when: valve switch is OFF}
        user: {kind: flow user, takes from: duct, takes: 52 lb/min, needs: 12 psig}
        joint: {kind: leak, at: duct, into: zone, area: 0 in2}
        louvre: {kind: vent, at: zone, bore: 3 in}
        loop: {kind: leak loop, watches: zone temperature, alarm: 180 degF for 5 s}
        port: {kind: test port, at: duct, bore: 0.25 in}
      lights:
        leak light: {lit when: loop is lit}
      gauges:
        duct gauge: {reads: duct pressure, scale: 0..80 psig, step: 1 psi, good to: 1 psi, seen: flight deck}
      """;
  private static final String FILE =
      """
      offtake readings: 1
      system: one.yaml
      squawk: Low at idle
      item: test engine, serial DEMO-1
      date: 2026-11-01
      gauges used:
        gauge 7: {good to: 0.5 psi, calibration due: 2026-10-01}
      readings:
        - at: idle
          duct pressure: 15 psig
          port: 15 psig with gauge 7
          leak light: off
      seen:
        check valve: sound
      """;

  private static BleedSystem system;
  private static Found low;
  private static Found normal;
  private static Found impossible;

  private static Found find(ReadingsRead read) {
    assertThat(read.problems()).isEmpty();
    Prior prior = Prior.of(Prior.Reason.SQUAWK);
    return Finder.find(system, read.readings().orElseThrow(), prior, 1, share -> {});
  }

  private static String print(Found found, boolean all, String... notes) {
    return FindText.print(found, new FindText.Manner(80, Style.SHOP, all, TODAY, List.of(notes)));
  }

  @BeforeAll
  static void search() {
    system = SystemReader.readText("one.yaml", ENGINE, Kinds.all()).system().orElseThrow();
    low = find(ReadingsReader.readText("r.yaml", FILE, system));
    normal =
        find(
            ReadingsReader.readLines(
                List.of("idle: duct 23 psig, leak light off", "high: duct 45 psig"), system));
    impossible =
        find(
            ReadingsReader.readLines(
                List.of(
                    "idle: duct 2 psig, port 79 psig with gauge 1",
                    "high: duct 78 psig, port 1 psig with gauge 2"),
                system));
  }

  @Test
  void theWholePageStaysWithinItsColumns() {
    for (Found found : List.of(low, normal, impossible)) {
      for (Style style : Style.values()) {
        for (boolean all : new boolean[] {false, true}) {
          FindText.Manner manner = new FindText.Manner(80, style, all, TODAY, List.of());
          assertThat(FindText.print(found, manner).lines())
              .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80))
              .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
        }
      }
    }
  }

  @Test
  void whatWasReadStandsOnTopAndIsSigned() {
    String text = print(low, false, "A note.");
    assertThat(text).startsWith("ONE ENGINE   \"Low at idle\"").contains("NOTE  A note.");
    assertThat(text).contains("all at idle | test engine, serial DEMO-1 | 2026-11-01");
    assertThat(text).contains("TYPICAL NUMBERS", "Trust the order of checks, not the psi.");
    assertThat(text).contains("The calibration of gauge 7 was due on 2026-10-01: it is overdue.");
    assertThat(text).contains("Looked at check valve, \"sound\": taken as sound.");
    assertThat(text).containsSubsequence("SIGN", "item", "date 2026-11-01", "read by", "CAUTION");
  }

  @Test
  void groupsAreLetteredAndCutShortUnlessAllIsAsked() {
    String brief = print(low, false);
    String whole = print(low, true);
    assertThat(brief).contains("  A  ", "chance in 100", "BY REMOVABLE UNIT", "CHECK NEXT");
    assertThat(whole.lines().count()).isGreaterThan(brief.lines().count());
    Found.Group lead =
        low.groups().stream().filter(group -> !group.asSound()).findFirst().orElseThrow();
    assertThat(lead.members()).hasSizeGreaterThan(4);
    assertThat(brief).contains("and " + (lead.members().size() - 4) + " more");
    String plain = whole.replaceAll("\\s+", " ");
    for (int member : lead.members()) {
      assertThat(plain).contains(FindWords.cause(low.ranked().get(member).cause()));
    }
  }

  @Test
  void chancesAreWholeNumbers() {
    assertThat(FindWords.chance(0.004)).isEqualTo("below 1");
    assertThat(FindWords.chance(0.006)).isEqualTo("1");
    assertThat(FindWords.chance(0.8451)).isEqualTo("85");
    String causes = print(low, true).replaceAll("(?s).*chance in 100\n(.*)BY REMOVABLE.*", "$1");
    assertThat(causes.lines().filter(line -> line.endsWith("below 1") || line.matches(".* \\d+$")))
        .hasSizeGreaterThan(5);
    assertThat(causes).doesNotContainPattern("\\d\\.\\d+\n");
  }

  @Test
  void soundReadingsAreToldAsSuchWithoutARollOfSuspects() {
    String text = print(normal, false);
    assertThat(text).contains("  Nothing wrong, or something that hides in these readings.");
    assertThat(text).contains("something that hides in these readings (dead or dormant): ");
    assertThat(text).doesNotContain("BY REMOVABLE UNIT");
    assertThat(print(normal, true).lines().count()).isGreaterThan(text.lines().count());
  }

  @Test
  void readingsThatNothingExplainsComeFirst() {
    assertThat(impossible.explained()).isFalse();
    String answer = print(impossible, false).replaceAll("(?s)^.*?\n\n", "");
    assertThat(answer).startsWith("  Nothing on the list explains your readings.");
    assertThat(answer).contains("None of it fits");
    assertThat(impossible.none()).isGreaterThan(0.5);
  }

  @Test
  void oneReadingThatNothingExplainsIsCalledOut() {
    Found slip =
        find(
            ReadingsReader.readLines(
                List.of(
                    "idle: duct 23 psig, port 24 psig with gauge 1",
                    "high: duct 43 psig, port 63 psig with gauge 2"),
                impossible.system()));

    assertThat(print(slip, false).replaceAll("\\s+", " "))
        .contains("Port 63 psig at high: it does not fit. Read it again, or doubt its gauge.");
  }

  @Test
  void everyFieldIsDocumentedAndNoOther() throws IOException, QuantityProblem {
    Set<String> written = new TreeSet<>();
    Found checked = find(ReadingsReader.readLines(List.of("idle: duct 15 psig"), system));
    for (Found found : List.of(low, normal, impossible, recorded(), checked)) {
      FindText.Manner manner =
          new FindText.Manner(80, Style.SHOP, false, TODAY, List.of("A note."));
      fields("", new ObjectMapper().readTree(FindJson.print(found, manner)), written);
    }
    Set<String> documented =
        Pattern.compile("(?m)^\\| `([^`]+)` \\|")
            .matcher(Files.readString(JSON_DOCS))
            .results()
            .map((MatchResult row) -> row.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(documented).containsAll(written);
    documented.removeAll(written);
    // Not on this small engine: an interlock that no paper states, what must never be, a check in
    // another line-up.
    documented.removeIf(field -> field.startsWith("advice.not asked for"));
    documented.removeIf(field -> field.startsWith("advice.checks[].reads."));
    assertThat(documented).isSubsetOf("advice.checks[].holds only if");
  }

  private static Found recorded() throws QuantityProblem {
    List<Fault> slow = new FaultReader(RecordedBench.SYSTEM).read("regulator slow 8");
    Readings readings = RecordedBench.recorded("", slow);
    Prior prior = Prior.of(Prior.Reason.SQUAWK);
    return Finder.rank(RecordedBench.SYSTEM, readings, prior, 1, share -> {});
  }

  @Test
  void aRecordingIsToldAgainstWhatIsForetold() throws QuantityProblem {
    String text = print(recorded(), false);

    assertThat(text).contains("0 readings, 1 recording", "in the recording run.csv");
    assertThat(text).containsPattern("RECORDED AGAINST +healthy +A");
    assertThat(text).containsPattern("duct pressure, psi +[+-][0-9.]+ at [0-9.]+ s");
    assertThat(text).doesNotContain("READ AGAINST");
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
  }

  private static void fields(String path, JsonNode node, Set<String> into) {
    if (node.isArray()) {
      into.add(path + "[]");
      node.forEach(each -> fields(path + "[]", each, into));
    } else if (node.isObject()) {
      String dot = path.isEmpty() ? "" : path + ".";
      node.properties().forEach(f -> fields(dot + f.getKey(), f.getValue(), into));
    } else {
      into.add(path);
    }
  }

  /** The page on {@code find} tells of each heading, and its numbers are those of the code. */
  @Test
  void everyHeadingIsTold() throws IOException {
    String docs = Files.readString(DOCS);
    Pattern heading = Pattern.compile("(?m)^([A-Z]{2,}( [A-Z]{2,})*)(?= |$)");
    for (Found found : List.of(low, normal, impossible)) {
      String body = print(found, false).replaceAll("(?s)^.*?\n\n", "");
      heading
          .matcher(body)
          .results()
          .forEach(label -> assertThat(docs).contains("**" + label.group(1) + "**"));
    }
    for (Prior.Reason reason : Prior.Reason.values()) {
      Prior prior = Prior.of(reason);
      assertThat(docs)
          .contains("| " + reason.words() + " | " + FindWords.chance(prior.healthy()) + " |");
    }
    Prior prior = Prior.of(Prior.Reason.SQUAWK);
    assertThat(docs)
        .contains(Math.round(prior.evidentHours()) + " hours")
        .contains(Math.round(prior.dormantHours()) + " hours")
        .contains(Math.round(1 / prior.unheard()) + " times less often")
        .contains(FindWords.chance(prior.none()) + " in 100");
  }
}
