package dev.offtake.desk.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;

/** How answers are sent. */
final class Sender {
  static final String JSON = "application/json";

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Shorter answers are sent as they are. */
  private static final int LONG = 24 * 1024;

  private Sender() {}

  /** Sends an answer that is made anew each time; by gzip where it is long. */
  static void json(Context context, JsonNode node) {
    byte[] bytes = bytes(node);
    boolean zipped = bytes.length > LONG && takesGzip(context);
    if (zipped) {
      context.header("Content-Encoding", "gzip");
    }
    write(context, JSON, zipped ? Assets.zip(bytes) : bytes);
  }

  static byte[] bytes(JsonNode node) {
    try {
      return MAPPER.writeValueAsBytes(node);
    } catch (JsonProcessingException never) {
      throw new IllegalStateException(never);
    }
  }

  /** Sends something that stays the same, unless the browser has it. */
  static void asset(Context context, Assets.Asset asset) {
    context.header("Cache-Control", "no-cache");
    context.header("ETag", asset.tag());
    context.header("Vary", "Accept-Encoding");
    if (asset.tag().equals(context.header("If-None-Match"))) {
      context.status(304);
      return;
    }
    boolean zipped = asset.shrinks() && takesGzip(context);
    if (zipped) {
      context.header("Content-Encoding", "gzip");
    }
    write(context, asset.type(), zipped ? asset.zipped() : asset.bytes());
  }

  private static boolean takesGzip(Context context) {
    return String.valueOf(context.header("Accept-Encoding")).contains("gzip");
  }

  private static void write(Context context, String type, byte[] bytes) {
    context.contentType(type);
    context.res().setContentLength(bytes.length);
    context.result(bytes);
  }
}
