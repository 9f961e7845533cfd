package dev.offtake.desk.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The readings and profiles in the folder of a system file and in the folders right below it. No
 * link that leads out of the folder is followed.
 *
 * @param folder of the system file
 */
public record FolderShelf(Path folder) implements Shelf {
  /** More files are not looked at. */
  private static final int MOST = 500;

  /** In a folder of more files the rest is not even seen. */
  private static final int MOST_SEEN = 20_000;

  /** Larger files are no readings, bytes. */
  private static final long LARGEST = 1 << 20;

  @Override
  public List<String> names() throws IOException {
    Path real = folder.toRealPath();
    List<Path> found = new ArrayList<>();
    Files.walkFileTree(real, Set.of(), 2, new Looks(found));
    return found.stream()
        .map(path -> real.relativize(path).toString().replace('\\', '/'))
        .sorted()
        .toList();
  }

  /** Looks at files; a folder below that is closed to this person has nothing for the page. */
  private static final class Looks extends SimpleFileVisitor<Path> {
    private final List<Path> found;
    private int seen;

    Looks(List<Path> found) {
      this.found = found;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      if (text(file)) {
        found.add(file);
      }
      boolean enough = found.size() >= MOST || ++seen >= MOST_SEEN;
      return enough ? FileVisitResult.TERMINATE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException closed) {
      return FileVisitResult.CONTINUE;
    }
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
