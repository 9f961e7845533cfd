package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.cause.Occasion;
import dev.offtake.cause.Readings;
import dev.offtake.cause.ReadingsReader;
import dev.offtake.profile.Profile;
import dev.offtake.profile.ProfileReader;
import dev.offtake.quantity.Grammar;
import dev.offtake.system.BleedSystem;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What lies beside a system file, as the page is sent it: readings and profiles. */
final class ShelfDocument {
  private static final Pattern PROFILE = Pattern.compile("(?m)^offtake profile:");
  private static final Pattern READINGS = Pattern.compile("(?m)^offtake readings:");

  private ShelfDocument() {}

  /** Fills the lists of what can be opened; a file that cannot be read is not among them. */
  static void fill(ObjectNode root, Shelf shelf, BleedSystem system) {
    ArrayNode readings = root.putArray("readings");
    ArrayNode profiles = root.putArray("profiles");
    try {
      for (String name : shelf.names()) {
        Optional<String> text = shelf.text(name);
        text.ifPresent(words -> file(name, words, system, readings, profiles));
      }
    } catch (IOException closed) {
      root.put("shelf", "the files beside the system file cannot be read");
    }
  }

  private static void file(
      String name, String text, BleedSystem system, ArrayNode readings, ArrayNode profiles) {
    if (PROFILE.matcher(text).find()) {
      // A profile of another system cannot be played on this one.
      ProfileReader.readText(name, text, system)
          .profile()
          .ifPresent(
              read -> profiles.addObject().put("file", name).put("title", title(read, name)));
    } else if (READINGS.matcher(text).find() || name.endsWith(".csv")) {
      ReadingsReader.readText(name, text, system)
          .readings()
          .ifPresent(read -> readings(readings.addObject(), name, read));
    }
  }

  private static String title(Profile profile, String name) {
    return profile.title().isEmpty() ? name : profile.title();
  }

  private static void readings(ObjectNode node, String name, Readings readings) {
    node.put("file", name).put("squawk", readings.squawk()).put("about", about(readings));
  }

  private static String about(Readings readings) {
    Set<String> powers = new LinkedHashSet<>();
    for (Occasion occasion : readings.occasions()) {
      String named = occasion.power().name();
      powers.add(named.isEmpty() ? Math.round(100 * occasion.power().core()) + " %" : named);
    }
    String at = powers.isEmpty() ? "" : " at " + String.join(", ", powers);
    return Grammar.count(readings.count(), "reading") + at;
  }
}
