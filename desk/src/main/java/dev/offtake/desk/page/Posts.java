package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsWriter;
import dev.offtake.cause.TripMoment;
import dev.offtake.cause.find.Prior;
import dev.offtake.quantity.Style;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What the page sends: readings to search by, and readings to keep. */
final class Posts {
  private static final Map<String, Prior.Reason> REASONS =
      Map.of(
          "", Prior.Reason.SQUAWK,
          "squawk", Prior.Reason.SQUAWK,
          "maintenance", Prior.Reason.AFTER_MAINTENANCE,
          "routine", Prior.Reason.ROUTINE);

  private final Opened opened;
  private final FindJobs jobs;
  private final Limits limits;

  Posts(Opened opened, FindJobs jobs, Limits limits) {
    this.opened = opened;
    this.jobs = jobs;
    this.limits = limits;
  }

  /** Begins a search. */
  void find(Context context) {
    Style style = Ask.of(context.queryParamMap()).style();
    String because = Ask.one(context.queryParamMap(), "because");
    Prior.Reason reason = REASONS.get(because);
    if (reason == null) {
      throw new Refusal(
          Refusal.BAD, "nobody looks because of " + because, "say squawk, maintenance or routine");
    }
    Readings readings = ReadingsDocument.read(body(context), opened.system());
    if (!tells(readings)) {
      throw new ReadingsDocument.Wrong(
          "nothing was read, so there is nothing to go by", "", "give at least one reading");
    }
    String page = String.valueOf(context.header("X-Page"));
    String id = jobs.begin(readings, reason, style, page.length() > 64 ? "" : page);
    context.status(202);
    Sender.json(context, JsonNodeFactory.instance.objectNode().put("id", id));
  }

  /** Whether there is anything to weigh. */
  private static boolean tells(Readings readings) {
    boolean trip =
        readings.occasions().stream().anyMatch(o -> o.trip().when() != TripMoment.When.NONE);
    return readings.count() > 0 || trip || !readings.seen().isEmpty();
  }

  /** How far a search is. */
  void look(Context context) {
    Sender.json(context, jobs.look(context.pathParam("id")));
  }

  /** Gives a search up. */
  void stop(Context context) {
    jobs.giveUp(context.pathParam("id"));
    Sender.json(context, JsonNodeFactory.instance.objectNode().put("stopped", true));
  }

  /** A file of readings. */
  void readings(Context context) throws IOException {
    String file = Ask.one(context.queryParamMap(), "file");
    String text =
        opened
            .shelf()
            .text(file)
            .orElseThrow(
                () ->
                    new Refusal(
                        Refusal.MISSING,
                        "there are no readings of that name",
                        "choose from the list"));
    JsonNode node = ReadingsDocument.json(file, text, opened.system());
    Sender.json(context, node);
  }

  /** The readings as a file to keep. */
  void save(Context context) {
    Readings readings = ReadingsDocument.read(body(context), opened.system());
    context.header("Content-Disposition", "attachment; filename=\"readings.yaml\"");
    context.contentType("application/yaml; charset=utf-8");
    String text = ReadingsWriter.yaml(readings, opened.system());
    context.result(text.getBytes(StandardCharsets.UTF_8));
  }

  private byte[] body(Context context) {
    try {
      byte[] body = context.req().getInputStream().readNBytes(limits.body() + 1);
      if (body.length > limits.body()) {
        throw new Refusal(Refusal.TOO_LARGE, "that is too much at once", "send fewer readings");
      }
      return body;
    } catch (IOException gone) {
      throw new Refusal(Refusal.BAD, "what was sent did not come whole", "send it again");
    }
  }
}
