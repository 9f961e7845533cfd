package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.Deflater;

/**
 * A pocket sheet as one file of HTML: the page's own script and styles, its fonts, and the answers,
 * packed. Nothing is loaded from anywhere.
 */
final class PocketPage {
  private static final Pattern LINKS = Pattern.compile("(?m)^\\s*<link\\b[^>]*>\\s*\\n");
  private static final Pattern STYLE =
      Pattern.compile("<link rel=\"stylesheet\" href=\"/([\\w-]+\\.css)\"([^>]*)>");
  private static final Pattern SCRIPT = Pattern.compile("<script type=\"module\"[^>]*></script>");
  private static final Pattern FONT =
      Pattern.compile("url\\([\"']?(fonts/[\\w.-]+\\.woff2)[\"']?\\)");

  /** Runs before the page's own modules, which ask the record from then on. */
  private static final String BEFORE =
      "const record = await module_pocket.unpacked("
          + "document.getElementById('pocket-record').textContent);\n"
          + "const answers = new module_pocket.Pocket(record);\n"
          + "module_api.answerBy(answers);\n"
          + "module_pocket.printed(answers);\n";

  private PocketPage() {}

  /**
   * Makes the file.
   *
   * @param title of the system
   * @param record what {@link Pocket} worked out
   */
  static byte[] of(String title, ObjectNode record) {
    String html = Assets.text("index.html").replace("{{title}}", Assets.escape(title));
    String style = styles(html);
    String script = script();
    String policy =
        "default-src 'none'; script-src "
            + hash(script)
            + "; style-src "
            + hash(style)
            + "; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'";
    String head =
        "<meta http-equiv=\"Content-Security-Policy\" content=\""
            + policy
            + "\">\n<style>"
            + style
            + "</style>\n";
    String packed = Base64.getEncoder().encodeToString(deflate(Sender.bytes(record)));
    String end =
        "<script type=\"text/plain\" id=\"pocket-record\">"
            + packed
            + "</script>\n<script>"
            + script
            + "</script>\n</body>";
    String bare = SCRIPT.matcher(LINKS.matcher(html).replaceAll("")).replaceAll("");
    String whole =
        bare.replace("<meta name=\"offtake-token\" content=\"{{token}}\">", head)
            .replace("</body>", end);
    return whole.getBytes(StandardCharsets.UTF_8);
  }

  private static String styles(String html) {
    StringBuilder all = new StringBuilder("\n");
    Matcher sheets = STYLE.matcher(html);
    while (sheets.find()) {
      String text = Assets.text(sheets.group(1));
      boolean paper = sheets.group(2).contains("print");
      all.append(paper ? "@media print {\n" + text + "}\n" : text);
    }
    return FONT.matcher(all)
        .replaceAll(found -> "url(\"data:font/woff2;base64," + font(found.group(1)) + "\")");
  }

  private static String font(String name) {
    Assets.Asset font = new Assets().asset(name).orElseThrow();
    return Base64.getEncoder().encodeToString(font.bytes());
  }

  private static String script() {
    String modules =
        Bundle.of("pocket", "page", BEFORE, name -> Assets.text(name + ".js"))
            .replace("</script", "<\\/script")
            .replace("<!--", "<\\!--");
    return "'use strict';\nglobalThis.offtakePocket = true;\n(async () => {\n"
        + modules
        + "})();\n";
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  private static byte[] deflate(byte[] bytes) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
    deflater.setInput(bytes);
    deflater.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 8);
    byte[] buffer = new byte[1 << 16];
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }
}
