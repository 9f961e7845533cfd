package dev.offtake.desk.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;

/** How answers are sent. */
final class Sender {
  static final String JSON = "application/json";

  /** Under this name a request carries when it came in, ns. */
  static final String BEGAN = "began";

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Shorter answers are sent as they are. */
  private static final int LONG = 24 * 1024;

  private Sender() {}

  /** Sends an answer that is made anew each time; by gzip where it is long and goes far. */
  static void json(Context context, JsonNode node) {
    byte[] bytes = bytes(node);
    boolean zipped = bytes.length > LONG && takesGzip(context) && !near(context);
    if (zipped) {
      context.header("Content-Encoding", "gzip");
    }
    byte[] sent = zipped ? Assets.zip(bytes) : bytes;
    time(context);
    write(context, JSON, sent);
  }

  /** How long the server took, for whoever measures: ms from the gate to the answer. */
  private static void time(Context context) {
    Long began = context.attribute(BEGAN);
    if (began != null) {
      double ms = (System.nanoTime() - began) * 1e-6;
      context.header("Server-Timing", String.format(Locale.ROOT, "answer;dur=%.3f", ms));
    }
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

  /** Whether the browser is on this machine: packing would only cost time. */
  private static boolean near(Context context) {
    try {
      return InetAddress.getByName(context.req().getRemoteAddr()).isLoopbackAddress();
    } catch (UnknownHostException never) {
      return false;
    }
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
