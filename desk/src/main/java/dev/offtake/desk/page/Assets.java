package dev.offtake.desk.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;

/** The files of the page, all of them in the jar under {@code /page/}. */
final class Assets {
  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "png", "image/png",
          "woff2", "font/woff2",
          "txt", "text/plain; charset=utf-8",
          "json", "application/json");

  /** Names without a way up and without anything that a file system means. */
  private static final Pattern NAME =
      Pattern.compile("(?:[a-zA-Z0-9_-]+/){0,3}[a-zA-Z0-9_-]+(?:[.-][a-zA-Z0-9_-]+)*\\.[a-z0-9]+");

  /** The charts of the page are a library's. */
  private static final String UPLOT = "uplot/";

  private static final String LIBRARY = "/META-INF/resources/webjars/uplot/1.6.30/dist/";

  private final Map<String, Asset> known = new ConcurrentHashMap<>();

  /**
   * A file as it is sent.
   *
   * @param bytes plain
   * @param zipped the same by gzip; as long or shorter, else the plain ones
   * @param type of its content
   * @param tag changes when the content does
   */
  record Asset(byte[] bytes, byte[] zipped, String type, String tag) {
    static Asset of(byte[] bytes, String type) {
      byte[] zipped = zip(bytes);
      return new Asset(bytes, zipped.length < bytes.length ? zipped : bytes, type, digest(bytes));
    }

    /** Whether it is worth sending it by gzip. */
    boolean shrinks() {
      return zipped.length < bytes.length;
    }
  }

  /**
   * A file.
   *
   * @param name below {@code /page/}
   * @return empty when there is none
   */
  Optional<Asset> asset(String name) {
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    if (type == null || !NAME.matcher(name).matches() || name.endsWith(".html")) {
      return Optional.empty();
    }
    Asset there = known.get(name);
    if (there == null) {
      byte[] bytes = bytes(name);
      if (bytes == null) {
        return Optional.empty();
      }
      there = Asset.of(bytes, type);
      known.put(name, there);
    }
    return Optional.of(there);
  }

  /** Where a file of the page lies in the jar. */
  private static String place(String name) {
    return name.startsWith(UPLOT) ? LIBRARY + name.substring(UPLOT.length()) : "/page/" + name;
  }

  /** Text of a file of the page that must be there. */
  static String text(String name) {
    byte[] bytes = bytes(name);
    if (bytes == null) {
      throw new IllegalStateException("the jar has no file page/" + name);
    }
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static byte @org.jspecify.annotations.Nullable [] bytes(String name) {
    try (InputStream in = Assets.class.getResourceAsStream(place(name))) {
      return in == null ? null : in.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** By gzip. */
  static byte[] zip(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 2 + 64);
    try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(bytes);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
    return out.toByteArray();
  }

  /** A tag of the content. */
  static String digest(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return '"' + HexFormat.of().formatHex(hash, 0, 10) + '"';
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  /** Text that means nothing but itself in HTML. */
  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
