package dev.offtake.explain;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.profile.BleedDown;
import dev.offtake.profile.Shortage;
import dev.offtake.profile.Watch;
import dev.offtake.study.Column;
import dev.offtake.study.Curve;
import dev.offtake.time.Cycle;
import dev.offtake.time.Event;
import java.util.Locale;

/** A profile that was played as JSON, SI inside, its layout numbered by {@code offtake play}. */
public final class PlayJson {
  /** Number of the layout; raised when a field changes its meaning or goes. */
  public static final int LAYOUT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private PlayJson() {}

  /** Makes the document. */
  public static String print(PlayAnswer answer) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("offtake play", LAYOUT);
    root.put("title", answer.asked().title());
    root.put("profile", answer.profile().title());
    root.put("power", answer.asked().power());
    root.put("day", answer.asked().day());
    root.put("line-up", answer.asked().lineUp());
    answer.asked().broken().forEach(root.putArray("if")::add);
    answer.asked().warnings().forEach(root.putArray("notes")::add);
    root.put("played to its end", answer.done());
    if (!answer.trouble().isEmpty()) {
      root.put("trouble", answer.trouble());
    }
    answer.headline().forEach(root.putArray("headline")::add);
    story(root, answer);
    judged(root, answer);
    answer.end().forEach(root.putArray("at the end")::add);
    values(root, answer.curve().curve());
    answer.bleed().ifPresent(bleed -> bleed(root.putObject("bleed-down"), bleed));
    answer.assumes().forEach(root.putArray("assumed")::add);
    root.put("stands on", answer.asked().standsOn());
    root.put("caution", StateAnswer.CAUTION);
    return root.toPrettyString();
  }

  private static void story(ObjectNode root, PlayAnswer answer) {
    ArrayNode story = root.putArray("story");
    for (PlayAnswer.Told told : answer.story()) {
      story.addObject().put("at", told.at()).put("done", told.done()).put("says", told.says());
    }
    ArrayNode events = root.putArray("events");
    for (Event event : answer.events()) {
      events
          .addObject()
          .put("at", event.seconds())
          .put("kind", event.kind().name().toLowerCase(Locale.ROOT))
          .put("part", event.part())
          .put("before", event.before())
          .put("after", event.after())
          .put("because", event.why());
    }
  }

  private static void judged(ObjectNode root, PlayAnswer answer) {
    ArrayNode limits = root.putArray("limits");
    for (Watch.Seen seen : answer.limits()) {
      limits
          .addObject()
          .put("part", seen.watch().part())
          .put("watches", seen.watch().what())
          .put("limit", seen.watch().limit())
          .put("passed upwards", seen.watch().upwards())
          .put("nearest", seen.most())
          .put("at", seen.at())
          .put("beyond for", seen.beyond());
    }
    ArrayNode shortages = root.putArray("short of air");
    for (Shortage one : answer.shortages()) {
      shortages
          .addObject()
          .put("user", one.user())
          .put("from", one.from())
          .put("until", one.until())
          .put("lasts", one.lasts())
          .put("worst at", one.worst())
          .put("takes", one.flow())
          .put("point", one.point())
          .put("pressure", one.pressure());
    }
    ArrayNode hunts = root.putArray("hunting");
    for (Cycle hunt : answer.hunts()) {
      hunts
          .addObject()
          .put("valve", hunt.part())
          .put("from", hunt.from())
          .put("until", hunt.until())
          .put("followed until", hunt.followed())
          .put("driven by", hunt.driver())
          .put("swing", hunt.swing())
          .put("hertz", hunt.hertz())
          .put("point", hunt.point())
          .put("pressure swing", hunt.pressure());
    }
  }

  private static void values(ObjectNode root, Curve curve) {
    ArrayNode columns = root.putArray("columns");
    for (Column column : curve.columns()) {
      columns.addObject().put("name", column.name()).put("measures", column.dimension().words());
    }
    ArrayNode rows = root.putArray("values");
    for (Curve.Row row : curve.up()) {
      ObjectNode node = rows.addObject();
      node.put("at", row.x());
      row.values().forEach(node.putArray("values")::add);
    }
  }

  private static void bleed(ObjectNode node, PlayAnswer.Bleeding bleed) {
    BleedDown healthy = bleed.healthy();
    node.put("fuel off at", healthy.off());
    node.put("to", healthy.to());
    node.put("looked at for", healthy.looked());
    ArrayNode pockets = node.putArray("pockets");
    for (PlayAnswer.Worst worst : bleed.worst()) {
      ObjectNode pocket = pockets.addObject();
      pocket.put("pocket", worst.pocket());
      pocket.put("at standstill", worst.begins());
      seconds(pocket, "healthy", worst.healthy());
      seconds(pocket, "worst", worst.worst());
      pocket.put("cause", worst.cause());
      pocket.put("left", worst.left());
    }
    bleed.causes().stream().map(PlayAnswer.Caused::words).forEach(node.putArray("causes")::add);
    bleed.proof().forEach(node.putArray("prove it")::add);
    bleed.open().forEach(node.putArray("what to open")::add);
  }

  /** A pocket that does not fall has no time. */
  private static void seconds(ObjectNode node, String name, double seconds) {
    if (Double.isFinite(seconds)) {
      node.put(name, seconds);
    }
  }
}
