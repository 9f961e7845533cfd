package dev.offtake.measure.cases;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The lists beside these classes. */
public final class Lists {
  private Lists() {}

  /** Every failure mode that Offtake lists for the demo. */
  public static List<ModeLine> modes() {
    return lines("modes.txt").stream().map(ModeLine::of).toList();
  }

  /** Every failure that Offtake does not list and that is drawn here. */
  public static List<Stranger> strangers() {
    return lines("strangers.txt").stream().map(Stranger::of).toList();
  }

  private static List<String> lines(String name) {
    try (InputStream in = Lists.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
