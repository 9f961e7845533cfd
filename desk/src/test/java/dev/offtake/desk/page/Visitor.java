package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.offtake.part.Kinds;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody who visits a running page, well-meaning or not. */
final class Visitor {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Pattern TOKEN = Pattern.compile("offtake-token\" content=\"([^\"]+)\"");

  private final HttpClient client = HttpClient.newHttpClient();
  private final int port;

  Visitor(int port) {
    this.port = port;
  }

  static final List<String> READINGS =
      List.of("readings/low-at-idle.yaml", "readings/trip-that-holds.yaml");

  static BleedSystem demo() {
    try {
      String text = JarShelf.read("demo-twin.yaml");
      return SystemReader.readText("demo-twin.yaml", text, Kinds.all()).system().orElseThrow();
    } catch (IOException missing) {
      throw new IllegalStateException(missing);
    }
  }

  static PageServer server(String host, Limits limits, List<String> said) throws IOException {
    Opened opened = new Opened(demo(), "demo-twin.yaml", new JarShelf(READINGS));
    return PageServer.start(opened, new PageServer.Settings(host, 0, limits, said::add));
  }

  /** An address with its question: pairs of names and values. */
  static String path(String path, String... query) {
    StringBuilder text = new StringBuilder(path);
    for (int i = 0; i < query.length; i += 2) {
      text.append(i == 0 ? '?' : '&').append(query[i]).append('=');
      text.append(URLEncoder.encode(query[i + 1], StandardCharsets.UTF_8));
    }
    return text.toString();
  }

  HttpResponse<String> get(String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(uri(path));
    return send(headers.length == 0 ? request : request.headers(headers));
  }

  HttpResponse<String> head(String path) {
    return send(HttpRequest.newBuilder(uri(path)).method("HEAD", BodyPublishers.noBody()));
  }

  HttpResponse<String> post(String path, String body, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(uri(path)).POST(BodyPublishers.ofString(body));
    return send(headers.length == 0 ? request : request.headers(headers));
  }

  /** A body whose length is not told before. */
  HttpResponse<String> stream(String path, byte[] body, String... headers) {
    HttpRequest.BodyPublisher chunks =
        BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(body));
    return send(HttpRequest.newBuilder(uri(path)).headers(headers).POST(chunks));
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), BodyHandlers.ofString());
    } catch (IOException gone) {
      throw new IllegalStateException(gone);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }

  JsonNode json(String path, String... query) {
    return json(get(path(path, query)));
  }

  static JsonNode json(HttpResponse<String> answer) {
    try {
      return MAPPER.readTree(answer.body());
    } catch (IOException none) {
      throw new IllegalStateException(answer.body(), none);
    }
  }

  /** The token that the page carries. */
  String token() {
    Matcher token = TOKEN.matcher(get("/").body());
    if (!token.find()) {
      throw new IllegalStateException("the page has no token");
    }
    return token.group(1);
  }

  private URI uri(String path) {
    return URI.create("http://127.0.0.1:" + port + path);
  }

  /** What is answered to lines that no honest client sends. */
  String raw(String... lines) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", port)) {
      socket.setSoTimeout(5000);
      OutputStream out = socket.getOutputStream();
      List<String> all = new ArrayList<>(List.of(lines));
      all.add("Connection: close");
      String text = String.join("\r\n", all) + "\r\n\r\n";
      out.write(text.getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
