package dev.offtake.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file whole or not at all: beside its place first, then into it in one step, so that a
 * full disk or an interruption leaves nothing half done and nothing behind.
 */
final class WholeFile {
  private WholeFile() {}

  /**
   * Writes a file.
   *
   * @param target the file
   * @param content what it shall hold
   * @param overwrite whether a file that is there already is replaced
   * @throws FileAlreadyExistsException when it is there already and shall not be replaced
   * @throws FileSystemException when its folder is not there
   * @throws IOException when it cannot be written; nothing is changed then
   */
  static void write(Path target, InputStream content, boolean overwrite) throws IOException {
    Path folder = folder(target);
    if (!overwrite && Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Path beside = folder.resolve(".offtake-" + ProcessHandle.current().pid() + ".part");
    // Removes it on Ctrl-C; the finally clause does on any other way out.
    beside.toFile().deleteOnExit();
    try {
      Files.copy(content, beside, StandardCopyOption.REPLACE_EXISTING);
      put(beside, target, overwrite);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /**
   * The folder in which a file would be, so that a long answer is not begun for nothing.
   *
   * @param target the file
   * @throws FileSystemException when its folder is not there, or it is a folder itself
   */
  static Path folder(Path target) throws FileSystemException {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new FileSystemException(String.valueOf(folder), null, "there is no such folder");
    }
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "it is a folder; name a file in it");
    }
    return folder;
  }

  private static void put(Path beside, Path target, boolean overwrite) throws IOException {
    if (!overwrite) {
      // Unlike an atomic move, this looks again whether a file has come while we wrote.
      Files.move(beside, target);
      return;
    }
    try {
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
