package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * What a person gets from {@code play}: a story that fits, files that are sound, clear refusals.
 */
class PlayCommandTest {
  private static final String TWIN = "../demo/demo-twin.yaml";
  private static final String STAND = "../demo/demo-stand.yaml";
  private static final String START = "../demo/profiles/start-on-shop-air.yaml";
  private static final String HUNT = "../demo/profiles/hunting-regulator.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  @TempDir private Path folder = Path.of("");

  private int play(String... more) {
    String[] arguments =
        Stream.concat(Stream.of("play", "--width", "80"), Stream.of(more)).toArray(String[]::new);
    return Main.prepare(
            new CommandLine(new Main()), new PrintWriter(out, true), new PrintWriter(err, true))
        .execute(arguments);
  }

  @Test
  void theStoryFitsAndItsFilesAreSound() throws IOException {
    Path csv = folder.resolve("run.csv");
    Path png = folder.resolve("run.png");
    String of = "duct pressure, bleed regulator opening";
    assertThat(play(STAND, HUNT, "--csv", csv.toString(), "--picture", png.toString(), "--of", of))
        .isZero();
    assertThat(out.toString()).contains("WHAT HAPPENS", "HUNTING", "VALUES", "CAUTION");
    assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
    List<String> lines = Files.readAllLines(csv);
    assertThat(lines.get(0)).isEqualTo("time s,duct pressure psig,bleed regulator opening %");
    assertThat(lines).contains("event at s,done or came,what happens");
    assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(2000);
  }

  @Test
  void whatIsBrokenStandsInThePictureToo() throws IOException {
    Path svg = folder.resolve("run.svg");
    String fault = "mid check valve slow 5";
    assertThat(play(STAND, HUNT, "--if", fault, "--picture", svg.toString())).isZero();
    assertThat(out.toString()).contains("IF    mid check valve slow 5");
    assertThat(Files.readString(svg)).contains("mid check valve slow 5").contains("time, s");
  }

  /** A full vessel of cold air that is emptied at once: colder than the properties of air go. */
  private static final String COLD =
      """
      offtake: 1
      title: Too cold
      about: Invented demo data.
      power settings:
        idle: {core: 62 %, fan: 24 %}
      switches:
        valve switch: [OPEN, SHUT]
      parts:
        supply:
          kind: supply
          to: line
          temperature: -60 degF
          table: {columns: [psig, lb/min], rows: [[150, 0], [140, 150]]}
        valve: {kind: shutoff valve, path: line -> duct, bore: 3 in, shut when: valve switch is SHUT}
        dump: {kind: orifice user, takes from: duct, bore: 2 in, open when: valve switch is SHUT}
        pack: {kind: flow user, takes from: duct, takes: 1 lb/min, needs: 5 psig}
      points:
        duct: {volume: 2 ft3}
      """;

  private static final String EMPTIES =
      """
      offtake profile: 1
      start: {power: idle}
      actions:
        at 5 s: {valve switch: SHUT}
      ends at: 20 s
      """;

  @Test
  void whatIsNotPlayedToItsEndSaysHowFarItCameAndEndsWithThree() throws IOException {
    Path system = Files.writeString(folder.resolve("cold.yaml"), COLD);
    Path profile = Files.writeString(folder.resolve("empties.yaml"), EMPTIES);
    Path csv = folder.resolve("run.csv");

    int code = play(system.toString(), profile.toString(), "--csv", csv.toString());

    assertThat(code).isEqualTo(3);
    assertThat(out.toString())
        .contains("It could not be played to its end: duct would be at", "200 to 2000 K")
        .contains("> valve switch to SHUT", "CAUTION");
    assertThat(Files.readAllLines(csv)).anyMatch(line -> line.startsWith("5."));
    assertThat(Files.readAllLines(csv)).noneMatch(line -> line.startsWith("6."));
  }

  @Test
  void aBleedDownTellsTheWorstOfItsCauses() {
    int code =
        play(
            STAND,
            "--bleed-down",
            "--at",
            "ground idle",
            "--set",
            "bleed switch: OFF",
            "--if",
            "dump valve stuck open");
    assertThat(code).isBetween(0, 1);
    assertThat(out.toString())
        .contains("BLEED-DOWN", "PROVE IT WITH A GAUGE", "hose of shop air line is taken off")
        .doesNotContainIgnoringCase(" safe ");
  }

  @Test
  void theStartHangsWhereTheAirIsTooWeak() {
    assertThat(play(STAND, START, "--if", "shop air line weak 80 %")).isBetween(0, 1);
    assertThat(out.toString())
        .contains("The start HANGS at core 2", "the starter's torque is used up")
        .doesNotContain("ground idle is reached");
  }

  @Test
  void aBleedDownLooksAtWhatIsLikelyByReadings() {
    String low = "ground idle: duct 12 psig";
    assertThat(play(STAND, "--bleed-down", "--at", "ground idle", "--likely", low)).isBetween(0, 1);
    assertThat(out.toString()).contains("Looked at besides, each for itself", "mid check valve");
  }

  @Test
  void readingsOfWhatIsNotThereAreToldWithTheirLine() {
    assertThat(play(STAND, "--bleed-down", "--likely", "ground idle: dukt 12 psig")).isEqualTo(2);
    assertThat(Told.line(err)).startsWith("readings:1: ").contains("Did you mean `duct`?");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void whatDoesNotGoTogetherIsAskedBack() {
    refused("nothing says what is done", TWIN);
    refused("--bleed-down does not go with a profile", STAND, START, "--bleed-down");
    refused("do not go with a profile", STAND, START, "--at", "take-off");
    refused("a picture is written as .svg or .png", STAND, START, "--picture", "run.gif");
    refused("for ever", TWIN, "--bleed-down", "--to", "0 psig");
    refused("nothing called \"duct presure\"", STAND, START, "--of", "duct presure");
    refused("does not fail by", STAND, START, "--if", "mid check valve melts");
  }

  private void refused(String says, String... arguments) {
    err.getBuffer().setLength(0);
    assertThat(play(arguments)).isEqualTo(2);
    assertThat(Told.complaint(err)).contains(says);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aBrokenProfileIsToldWithItsLine() throws IOException {
    Path bad = folder.resolve("bad.yaml");
    Files.writeString(bad, "offtake profile: 1\nactions:\n  at 5 s: {bleed swich: OFF}\n");
    assertThat(play(STAND, bad.toString())).isEqualTo(2);
    assertThat(Told.line(err)).startsWith("bad.yaml:3: Nobody can do `bleed swich`");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aProfileOfAnotherSystemIsRefusedByItsNames() {
    assertThat(play(TWIN, START)).isEqualTo(2);
    assertThat(Told.line(err)).contains("start-on-shop-air.yaml");
  }
}
