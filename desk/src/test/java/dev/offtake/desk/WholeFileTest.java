package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all. */
class WholeFileTest {
  @TempDir private Path folder = Path.of("");

  private static InputStream text(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Gives a few bytes and then fails, as a full disk or a pulled stick does. */
  private static final class Breaks extends InputStream {
    private int left = 10;

    @Override
    public int read() throws IOException {
      if (left-- > 0) {
        return 'x';
      }
      throw new IOException("No space left on device");
    }
  }

  private long files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.count();
    }
  }

  @Test
  void writesAndLeavesNothingBeside() throws IOException {
    Path file = folder.resolve("a.yaml");
    WholeFile.write(file, text("offtake: 1"), false);
    assertThat(file).hasContent("offtake: 1");
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void aFailureLeavesNothing() throws IOException {
    Path file = folder.resolve("a.yaml");
    assertThatThrownBy(() -> WholeFile.write(file, new Breaks(), false))
        .isInstanceOf(IOException.class);
    assertThat(files()).isZero();
  }

  @Test
  void aFailureLeavesWhatWasThere() throws IOException {
    Path file = Files.writeString(folder.resolve("a.yaml"), "mine");
    assertThatThrownBy(() -> WholeFile.write(file, new Breaks(), true))
        .isInstanceOf(IOException.class);
    assertThat(file).hasContent("mine");
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void replacesOnlyWhenTold() throws IOException {
    Path file = Files.writeString(folder.resolve("a.yaml"), "mine");
    assertThatThrownBy(() -> WholeFile.write(file, text("yours"), false))
        .isInstanceOf(FileAlreadyExistsException.class);
    assertThat(file).hasContent("mine");
    WholeFile.write(file, text("yours"), true);
    assertThat(file).hasContent("yours");
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void aMissingFolderIsNamed() {
    assertThatThrownBy(() -> WholeFile.write(folder.resolve("none/a.yaml"), text(""), false))
        .isInstanceOf(FileSystemException.class)
        .hasMessageContaining("there is no such folder");
  }
}
