package dev.offtake.desk.drawing;

import dev.offtake.system.BleedSystem;
import dev.offtake.system.Reading;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Systems to draw. */
final class Systems {
  private static final Path STARTERS =
      Path.of("src/main/resources/dev/offtake/desk/starters").toAbsolutePath();

  private Systems() {}

  /** The demos and the four starters. */
  static List<Path> files() {
    return List.of(
        Path.of("../demo/demo-twin.yaml"),
        Path.of("../demo/demo-rotor.yaml"),
        STARTERS.resolve("twin.yaml"),
        STARTERS.resolve("stand.yaml"),
        STARTERS.resolve("auxiliary.yaml"),
        STARTERS.resolve("turboshaft.yaml"));
  }

  static BleedSystem of(Path file) {
    return good(SystemReader.read(file));
  }

  static BleedSystem of(String text) {
    return good(SystemReader.readText("test.yaml", text, (Path) null));
  }

  private static BleedSystem good(Reading reading) {
    return reading.system().orElseThrow(() -> new AssertionError(reading.problems()));
  }

  static BleedSystem demo() {
    return of(files().get(0));
  }

  static String demoText() throws IOException {
    return Files.readString(files().get(0));
  }

  /** Two sides of many branches: 12 of them make 181 parts. */
  static BleedSystem many(int branches) {
    StringBuilder text =
        new StringBuilder(
            """
            offtake: 1
            title: Many parts
            about: Invented.
            power settings: {idle: {core: 62 %}}
            sides: {left: L, right: R}
            each side:
              parts:
                tap:
                  kind: compressor tap
                  to: tap duct
                  bore: 3 in
                  taken on: standard day
                  table:
                    columns: [core %, psig, degF]
                    rows:
                      - [62, 26, 322]
                      - [99, 285, 950]
                tap valve: {kind: check valve, path: tap duct -> manifold, bore: 3 in}
            """);
    for (int k = 0; k < branches; k++) {
      text.append(
          """
              branch valve %1$d: {kind: shutoff valve, path: manifold -> branch duct %1$d, bore: 2 in}
              line %1$d: {kind: duct, path: branch duct %1$d -> zone duct %1$d, bore: 2 in, length: 60 in}
              trim %1$d: {kind: orifice, path: zone duct %1$d -> user duct %1$d, bore: 1 in}
              user %1$d: {kind: flow user, takes from: user duct %1$d, takes: 5 lb/min, needs: 5 psig}
              port %1$d: {kind: test port, at: user duct %1$d}
              spray %1$d: {kind: orifice user, takes from: zone duct %1$d, bore: 0.3 in, needs: 3 psig}
              relief %1$d: {kind: relief valve, path: branch duct %1$d -> ambient, bore: 1 in, cracks at: 70 psig}
          """
              .formatted(k));
    }
    text.append(
        """
        between sides:
          cross valve: {kind: shutoff valve, path: left manifold <-> right manifold, bore: 3 in}
        """);
    return of(text.toString());
  }
}
