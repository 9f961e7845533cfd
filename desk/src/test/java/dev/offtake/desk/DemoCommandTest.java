package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.desk.page.JarShelf;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What the demo carries in the jar. */
class DemoCommandTest {
  /** A page of the demo offers its profiles as well as its readings. */
  @Test
  void profilesAndReadingsLieBesideTheSystem() throws IOException {
    JarShelf shelf = new JarShelf(DemoCommand.besides());
    assertThat(shelf.names())
        .contains("profiles/slam-from-ground-idle.yaml", "readings/low-at-idle.yaml");
    for (String name : shelf.names()) {
      assertThat(shelf.text(name)).as(name).isPresent();
    }
  }
}
