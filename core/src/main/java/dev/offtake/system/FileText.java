package dev.offtake.system;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The text of a file, once it is sure that it is a text of bearable size in UTF-8. */
public final class FileText {
  /** Largest file, bytes. */
  static final int LARGEST = 2 * 1024 * 1024;

  private FileText() {}

  /** The text with line feeds, or null when there is a problem. */
  public static @Nullable String read(Path path, String name, Problems problems) {
    try {
      if (Files.isDirectory(path)) {
        problems.add(name, 1, "`" + path + "` is a folder", "Give the file in it");
      } else if (!Files.exists(path)) {
        problems.add(name, 1, "There is no file `" + name + "`", "Check the name and the folder");
      } else if (!Files.isRegularFile(path)) {
        String mend = "Save the text in a file and give that";
        problems.add(name, 1, "`" + path + "` is a device or a pipe, not a file", mend);
      } else if (!Files.isReadable(path)) {
        String mend = "Ask who owns it, or copy it to a folder of yours";
        problems.add(name, 1, "You may not read `" + path + "`", mend);
      } else if (Files.size(path) > LARGEST) {
        String mend = "This is for text that people write; keep recordings elsewhere";
        problems.add(name, 1, "The file is larger than 2 MB", mend);
      } else {
        return decode(Files.readAllBytes(path), name, problems);
      }
    } catch (IOException e) {
      problems.add(name, 1, "The file cannot be read: its disk does not answer", "Copy it here");
    }
    return null;
  }

  /** The text of bytes in UTF-8 with line feeds, or null when there is a problem. */
  public static @Nullable String decode(byte[] bytes, String name, Problems problems) {
    if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
      problems.add(name, 1, "The file is in UTF-16", "Save it as UTF-8");
      return null;
    }
    int skip = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    try {
      ByteBuffer rest = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(rest)
              .toString();
      return checked(text.replace("\r\n", "\n").replace('\r', '\n'), name, problems);
    } catch (CharacterCodingException e) {
      problems.add(name, 1, "The file is not UTF-8 text", "Save it as UTF-8");
      return null;
    }
  }

  private static @Nullable String checked(String text, String name, Problems problems) {
    int at = Unprintable.in(text);
    if (at < 0) {
      return text;
    }
    int line = 1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
    if (text.charAt(at) == '\0') {
      problems.add(name, line, "The file is not text", "Save it as UTF-8 text");
    } else {
      String which = Unprintable.name(text.charAt(at));
      String wrong = "A character that does not print, " + which + ", stands in this line";
      problems.add(name, line, wrong, "Type the line anew");
    }
    return null;
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }
}
