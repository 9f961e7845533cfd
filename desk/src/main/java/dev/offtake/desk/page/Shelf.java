package dev.offtake.desk.page;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The files that lie beside a system file and belong to it; nothing else can be reached. */
public interface Shelf {
  /** Names of the files that can be opened, such as {@code readings/low-at-idle.yaml}. */
  List<String> names() throws IOException;

  /**
   * Text of a file.
   *
   * @param name one of {@link #names()}
   * @return empty for any other name
   * @throws IOException when it cannot be read
   */
  Optional<String> text(String name) throws IOException;
}
