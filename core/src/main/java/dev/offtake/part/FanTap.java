package dev.offtake.part;

/** The kind <em>fan tap</em>: cooling air taken behind the fan. */
public final class FanTap {
  /** The kind. */
  public static final Kind KIND =
      new TapKind(
          "fan tap",
          "Takes cooling air behind the fan; its pressure and temperature follow fan speed.",
          true,
          "[24, 0.4, 62], [96, 8.5, 125]");

  private FanTap() {}
}
