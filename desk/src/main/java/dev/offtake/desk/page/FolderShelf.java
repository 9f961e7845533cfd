package dev.offtake.desk.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The readings and profiles in the folder of a system file and in the folders right below it. No
 * link that leads out of the folder is followed.
 *
 * @param folder of the system file
 */
public record FolderShelf(Path folder) implements Shelf {
  /** More files are not looked at. */
  private static final int MOST = 500;

  /** Larger files are no readings, bytes. */
  private static final long LARGEST = 1 << 20;

  @Override
  public List<String> names() throws IOException {
    List<String> names = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder, 2)) {
      all.filter(FolderShelf::text).limit(MOST).sorted().forEach(path -> names.add(name(path)));
    } catch (UncheckedIOException unreadable) {
      // A folder below that is closed to this person has nothing for the page.
      return List.copyOf(names);
    }
    return List.copyOf(names);
  }

  private String name(Path path) {
    return folder.relativize(path).toString().replace('\\', '/');
  }

  private static boolean text(Path path) {
    String name = String.valueOf(path.getFileName());
    boolean hidden = name.startsWith(".");
    boolean ending = name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".csv");
    return !hidden && ending && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
  }

  @Override
  public Optional<String> text(String name) throws IOException {
    if (!names().contains(name)) {
      return Optional.empty();
    }
    Path real = folder.resolve(name).toRealPath();
    if (!real.startsWith(folder.toRealPath()) || Files.size(real) > LARGEST) {
      return Optional.empty();
    }
    return Optional.of(new String(Files.readAllBytes(real), StandardCharsets.UTF_8));
  }
}
