package dev.offtake.explain;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import dev.offtake.study.effect.Finding;

/** What a failure leads to, in a clause each. */
final class FindingWords {
  private final Style style;
  private final double ambient;

  /**
   * Prepares.
   *
   * @param style units to speak in
   * @param ambient pressure outside at the occasion, Pa
   */
  FindingWords(Style style, double ambient) {
    this.style = style;
    this.ambient = ambient;
  }

  String of(Finding finding) {
    String place = finding.place();
    return switch (finding.criterion()) {
      case RECIRCULATION -> air(finding) + " runs back into the engine at the " + place;
      case LEAK -> air(finding) + " escapes at " + place;
      case SHORT -> place + " goes short: " + flows(finding);
      case ALL_SHORT -> place + " goes short on all sides";
      case TRIPPED -> place + " acts";
      case RELIEVED -> place + " opens";
      case UNTOLD -> "a protection acts and no light tells";
      case UNPROTECTED ->
          place
              + " does not act though "
              + value(finding.value(), finding)
              + " is past its "
              + value(finding.limit(), finding);
      case OVER_LIMIT ->
          place
              + " is passed: "
              + value(finding.value(), finding)
              + " where "
              + value(finding.limit(), finding)
              + " is allowed";
      case HOTTER ->
          place
              + " is at "
              + value(finding.value(), finding)
              + ", healthy never above "
              + value(finding.limit(), finding);
      case PIECES -> "pieces of the " + place + " are loose in the air";
      case NO_REST -> "no steady state";
      case SHOWS -> "nothing that matters; it shows";
      case NOTHING -> "nothing that matters";
    };
  }

  private String air(Finding finding) {
    return style.print(finding.flow(), Dimension.MASS_FLOW)
        + " of "
        + style.print(finding.value(), Dimension.TEMPERATURE)
        + " air";
  }

  private String flows(Finding finding) {
    return style.print(finding.flow(), Dimension.MASS_FLOW)
        + " where "
        + style.print(finding.healthyFlow(), Dimension.MASS_FLOW)
        + " flowed";
  }

  private String value(double si, Finding finding) {
    boolean pressure = finding.dimension() == Dimension.ABSOLUTE_PRESSURE;
    return pressure
        ? style.print(si - ambient, Dimension.GAUGE_PRESSURE)
        : style.print(si, Dimension.TEMPERATURE);
  }
}
