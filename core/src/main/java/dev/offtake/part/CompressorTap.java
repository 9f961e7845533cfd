package dev.offtake.part;

import java.util.List;

/** The kind <em>compressor tap</em>: air taken from a stage of the compressor. */
public final class CompressorTap {
  /** The kind. */
  public static final Kind KIND =
      new TapKind(
          "compressor tap",
          "Takes air from a compressor stage; its pressure and temperature follow core speed.",
          false,
          "[62, 8.1, 188], [99, 103, 610]");

  private CompressorTap() {}

  /** Removable units: the tap is a port of the engine. */
  static final List<String> UNITS = List.of("tap", "engine");
}
