package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import picocli.CommandLine;

/** What a person gets from {@code curve}: tables that fit, files that are sound, clear refusals. */
class CurveCommandTest {
  private static final String DEMO = "../demo/demo-twin.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");

  private int curve(String... more) {
    String[] arguments =
        Stream.concat(Stream.of("curve", DEMO, "--width", "80"), Stream.of(more))
            .toArray(String[]::new);
    return Main.prepare(
            new CommandLine(new Main()), new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  @Test
  void theTableFitsAndTellsTheHandover() {
    assertThat(curve("--points", "10")).isZero();
    assertThat(out.toString())
        .contains("mid tap takes over from the high tap", "fed by", "CAUTION", "In brackets:")
        .doesNotContain("GOING DOWN", "NO ANSWER");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void bothWaysAreToldWhereSomethingIsRemembered() {
    assertThat(curve("--over", "core=62..80", "--set", "left cooling air valve: locked shut"))
        .isZero();
    assertThat(out.toString())
        .contains("The way down is not the way up", "GOING UP", "GOING DOWN", "TRIPS");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cor=55..100 | did you mean core?",
        "core=80..60 | the range runs backwards",
        "core=80..80 | it has no length",
        "core=fast | is no range for core",
        "core=-5..50 | is outside anything that core can be",
        "core=55..100 psig | is no unit of core",
        "altitude=0..40000 | has no unit",
        "altitude=0..400000 ft | is outside anything that altitude can be",
        "left bleed regulater set=30..40 psig | did you mean left bleed regulator set?",
        "left pack foo=1..2 | numbers of the left pack are demand, wide open area",
        "left bleed regulator set | nothing says from where to where",
        "unicorn=1..2 | say core, altitude",
      })
  void whatIsNoRangeIsAskedBack(String over, String says) {
    assertThat(curve("--over", over)).isEqualTo(2);
    assertThat(Told.complaint(err)).contains(says).doesNotContain("fault");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void pointsColumnsAndFoldersAreLookedAtFirst() {
    assertThat(curve("--points", "1")).isEqualTo(2);
    assertThat(curve("--show", "left duct presure")).isEqualTo(2);
    assertThat(curve("--png", folder.resolve("none/a.png").toString())).isEqualTo(2);
    assertThat(curve("--csv", folder.toString())).isEqualTo(2);
    assertThat(Told.line(err))
        .contains(
            "1 points make no curve",
            "did you mean left duct pressure?",
            "there is no such folder",
            "it is a folder; name a file in it");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aCurveOutsideItsTablesIsCutAndSaysSo() {
    assertThat(curve("--over", "core=30..70")).isZero();
    assertThat(out.toString()).contains("NO ANSWER at core 30.0 to", "its table runs from 62 to");
  }

  @Test
  void aCurveWithoutAnyAnswerIsNoAnswer() {
    assertThat(curve("--over", "core=10..20", "--points", "3")).isEqualTo(3);
    assertThat(out.toString()).contains("NO ANSWER", "CAUTION");
  }

  @Test
  void commaSeparatedValuesHaveTwoSoundBlocks() throws IOException {
    Path file = folder.resolve("c.csv");
    assertThat(curve("--over", "core=70..85", "--points", "6", "--csv", file.toString())).isZero();
    List<String> lines = Files.readAllLines(file);
    assertThat(lines.get(0)).startsWith("day,way,core %,left interstage pressure psig,");
    int gap = lines.indexOf("");
    int cells = lines.get(0).split(",", -1).length;
    assertThat(gap).isEqualTo(7);
    assertThat(lines.subList(0, gap)).allMatch(line -> line.split(",", -1).length == cells);
    assertThat(lines.get(gap + 1)).isEqualTo("day,event at core %,low,high,way,what happens");
    assertThat(lines.subList(gap + 2, lines.size())).hasSizeGreaterThan(5);
  }

  /** All words of a scalable picture, which must be sound. */
  private static String words(Path file) throws Exception {
    Document svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(Files.readAllBytes(file)));
    assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
    NodeList texts = svg.getElementsByTagName("text");
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < texts.getLength(); i++) {
      all.append(texts.item(i).getTextContent()).append(' ');
    }
    return all.toString();
  }

  @Test
  void healthyAndBrokenAreDrawnTogether() throws Exception {
    Path file = folder.resolve("b.svg");
    String fault = "left mid check valve stuck 1/3";
    assertThat(curve("--points", "12", "--if", fault, "--svg", file.toString())).isZero();
    assertThat(words(file))
        .contains("now: left mid check valve stuck 33 % open", "left duct, healthy")
        .contains("left duct, now", "right duct, both", "who would notice", "plain (shaded)")
        .contains("lost in the gauge (hatched)", "HIDDEN (white); nothing tells")
        .doesNotContain("Grey:");
    assertThat(out.toString()).contains("IF    left mid check valve stuck", "WHO WOULD NOTICE");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left mid check valv stuck | did you mean left mid check valve",
        "left mid check valve explodes | it may be: ",
      })
  void whatCannotFailIsAskedBack(String fault, String says) {
    assertThat(curve("--if", fault)).isEqualTo(2);
    assertThat(Told.complaint(err)).contains(says);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void contradictionsAreRefused() {
    assertThat(
            curve("--if", "left mid check valve stuck", "--if", "left mid check valve stuck open"))
        .isEqualTo(2);
    assertThat(Told.line(err)).contains("contradict each other");
  }

  @Test
  void theScalablePictureIsSoundAndSaysWhatItIs() throws Exception {
    Path file = folder.resolve("c.svg");
    assertThat(curve("--over", "core=76..84", "--points", "5", "--svg", file.toString())).isZero();
    String all = words(file);
    assertThat(all)
        .contains("Demo twin", "Invented demo data", "pressure, psig", "temperature, °F", "core, %")
        .contains("left duct", "takes over", "Advice, not approval", "Stands on", "high tap");
  }

  @Test
  void daysAreComparedInOnePicture() throws IOException {
    Path file = folder.resolve("c.png");
    String show = "left duct pressure, left pack flow, left bleed regulator opening";
    assertThat(
            curve(
                "--points",
                "10",
                "--day",
                "standard day",
                "--day",
                "hot day",
                "--show",
                show,
                "--png",
                file.toString(),
                "--metric"))
        .isZero();
    assertThat(out.toString()).contains("standard day", "hot day", "bar g", "kg/s");
    assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(2 * CurvePicture.WIDTH);
    assertThat(Told.line(err)).contains("Wrote ");
  }

  @Test
  void theHelpFitsAndShowsHow() {
    assertThat(curve("--help")).isZero();
    assertThat(out.toString()).contains("Examples:", "altitude=0..40000 ft", "--svg=FILE");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
  }
}
