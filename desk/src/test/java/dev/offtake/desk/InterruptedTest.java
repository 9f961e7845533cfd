package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who breaks off a long answer finds his files as they were, and nothing beside them. A process is
 * told to end, which Java takes as it takes Ctrl-C; the signal of Ctrl-C itself is deaf in what a
 * script starts in the background, as tests may be.
 */
@Timeout(120)
class InterruptedTest {
  private static final String MINE = "mine";

  /** It hunts for so long that nobody waits for its end. */
  private static final String LONG =
      """
      offtake profile: 1
      start: {power: take-off, load switch: ON}
      valves:
        bleed regulator: {sense line: 0.2 s, disc: 0.05 s}
      actions:
        at 5 s: {load switch: OFF}
        at 15 s: {load switch: ON}
      ends at: 5 h
      """;

  @TempDir private Path folder = Path.of("");

  /** Writes a file of which the last part never comes. */
  static final class Writes {
    private Writes() {}

    /** Writes to the file that is named. */
    public static void main(String[] arguments) throws IOException {
      InputStream never =
          new InputStream() {
            private int given;

            @Override
            public int read() throws IOException {
              if (given++ < 100_000) {
                return 'x';
              }
              System.err.print("wrote a part of it");
              System.err.flush();
              try {
                Thread.sleep(Long.MAX_VALUE);
              } catch (InterruptedException e) {
                throw new IOException(e);
              }
              return -1;
            }
          };
      WholeFile.write(Path.of(arguments[0]), never, true);
    }
  }

  private static Process start(Class<?> main, String... arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add("-D" + Progress.TERMINAL + "=true");
    command.add(main.getName());
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
  }

  /** Waits until it says how far it is, which it does while it works, and breaks it off. */
  private static String breakOff(Process process) throws IOException, InterruptedException {
    byte[] said = new byte[8];
    int many = process.getErrorStream().readNBytes(said, 0, said.length);
    assertThat(process.isAlive()).isTrue();
    process.destroy();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isNotZero();
    return new String(said, 0, many, StandardCharsets.UTF_8);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aLongPlayLeavesItsFilesAsTheyWere() throws IOException, InterruptedException {
    Path profile = Files.writeString(folder.resolve("long.yaml"), LONG);
    Path csv = Files.writeString(folder.resolve("run.csv"), MINE);
    String picture = folder.resolve("run.svg").toString();
    String[] play = {
      "play",
      "../demo/demo-stand.yaml",
      profile.toString(),
      "--csv",
      csv.toString(),
      "--picture",
      picture
    };

    assertThat(breakOff(start(Main.class, play))).isEqualTo("\rworking");
    assertThat(csv).hasContent(MINE);
    assertThat(files()).containsExactly("long.yaml", "run.csv");
  }

  @Test
  void aLongSearchLeavesNothing() throws IOException, InterruptedException {
    Path csv = folder.resolve("slam.csv");
    Files.copy(Path.of("../demo/recordings/slam-from-ground-idle.csv"), csv);
    String[] find = {
      "find",
      "../demo/demo-twin.yaml",
      "--recorded",
      csv.toString(),
      "--profile",
      "../demo/profiles/slam-from-ground-idle.yaml"
    };

    assertThat(breakOff(start(Main.class, find))).isEqualTo("\rworking");
    assertThat(files()).containsExactly("slam.csv");
  }

  /** The file is written in part when it happens. */
  @Test
  void whatIsBrokenOffWhileItIsWrittenLeavesNothing() throws IOException, InterruptedException {
    Path csv = Files.writeString(folder.resolve("run.csv"), MINE);

    assertThat(breakOff(start(Writes.class, csv.toString()))).isEqualTo("wrote a ");
    assertThat(csv).hasContent(MINE);
    assertThat(files()).containsExactly("run.csv");
  }
}
