package dev.offtake.system;

import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the files declare, sorted and with sides unfolded, before any value is given a meaning.
 * Filled by {@link DraftReader}.
 */
final class Draft {
  /** A piece of a file together with the side on which it stands; empty outside. */
  record Sided(String side, Words at, Item value) {
    String name() {
      return NameBook.full(side, at.text());
    }
  }

  String title = "";
  String about = "";
  final List<String> sides = new ArrayList<>();
  final Map<String, Entry> papers = new LinkedHashMap<>();
  final Map<String, Entry> days = new LinkedHashMap<>();
  final Map<String, Entry> settings = new LinkedHashMap<>();
  final Map<String, Sided> switches = new LinkedHashMap<>();
  final Map<String, Sided> points = new LinkedHashMap<>();
  final List<Sided> lineUps = new ArrayList<>();
  final List<Sided> never = new ArrayList<>();
  final List<Sided> rates = new ArrayList<>();
  final Map<String, Entry> severity = new LinkedHashMap<>();
  @Nullable Entry modelError;
  final Map<String, PartDraft> parts = new LinkedHashMap<>();
  final List<SideOverride> overrides = new ArrayList<>();
}
