package dev.offtake.system;

import java.util.List;
import java.util.Map;

/** Sections whose entries are parts. */
final class PartSections {
  /** The section whose parts say their kind. */
  static final String PARTS = "parts";

  /** The section in which one entry may stand for each side. */
  static final String GAUGES = "gauges";

  /** Sections of parts of one kind, in the order in which a file usually has them. */
  static final List<String> OF_ONE_KIND = List.of("trips", "limits", "lights", GAUGES);

  /** All of them. */
  static final List<String> ALL = List.of(PARTS, "trips", "limits", "lights", GAUGES);

  private static final Map<String, String> KINDS =
      Map.of("trips", "trip", "limits", "limit", "lights", "light", GAUGES, "gauge");

  private PartSections() {}

  /** The kind that a section's parts are of unless they say another; empty for none. */
  static String kind(String section) {
    return KINDS.getOrDefault(section, "");
  }
}
