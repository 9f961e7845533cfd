package dev.offtake.desk.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Files of the demo in the jar.
 *
 * @param names of the files, below {@code /demo/}
 */
public record JarShelf(List<String> names) implements Shelf {
  /** Keeps its names. */
  public JarShelf {
    names = List.copyOf(names);
  }

  @Override
  public Optional<String> text(String name) throws IOException {
    return names.contains(name) ? Optional.of(read(name)) : Optional.empty();
  }

  /**
   * Text of a demo file.
   *
   * @param name below {@code /demo/}
   * @throws IOException when there is none
   */
  public static String read(String name) throws IOException {
    try (InputStream in = JarShelf.class.getResourceAsStream("/demo/" + name)) {
      if (in == null) {
        throw new IOException("the jar has no file demo/" + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
