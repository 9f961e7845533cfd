package dev.offtake.explain;

import dev.offtake.part.EngineGauge;
import dev.offtake.part.Part;
import dev.offtake.part.View;
import dev.offtake.quantity.Dimension;
import dev.offtake.study.Sign;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What runs back into an engine, how much of its air that is, and what its gauges do. */
final class BreakBack {
  /** Kind of part through which air gets into an engine. */
  static final String TAP = "compressor tap";

  private static final String SHARE = "share of core flow";
  private static final String STAGE = "stage temperature";

  private final Compared c;
  private final List<Sign> signs;

  private BreakBack(Compared c, List<Sign> signs) {
    this.c = c;
    this.signs = signs;
  }

  /** Sentences; empty when nothing more than before runs back. */
  static List<String> of(Compared c, List<Sign> signs) {
    BreakBack back = new BreakBack(c, signs);
    List<String> says = new ArrayList<>();
    for (int i = 0; i < c.parts(); i++) {
      if (BreakHeadline.takesBack(c, i) && c.part(i).kind().equals(TAP)) {
        back.tap(i, says);
      }
    }
    if (!says.isEmpty()) {
      says.add(
          "The engine itself is not modelled: its compressor gets this hot air and works it again,"
              + " so that its stages and exhaust run hotter than shown. Keep such a run short, and"
              + " hold the engine's own limits.");
    }
    return says;
  }

  private void tap(int number, List<String> says) {
    Part tap = c.part(number);
    View view = c.is().view(number, c.style());
    double stage = view.observed(tap.name(), STAGE);
    double hot = c.airThrough(number);
    String against =
        String.format(
            Locale.ROOT,
            "%s of %s air runs back at the %s, whose stage has %s",
            c.flow(c.flowIs(number)),
            c.temperature(hot),
            tap.name(),
            c.temperature(stage));
    double share = Math.abs(view.observed(tap.name(), SHARE));
    String part =
        Double.isNaN(share)
            ? "; the file gives no core flow at this tap, so its share of the engine's air is not"
                + " known"
            : String.format(Locale.ROOT, ": %.1f %% of the core flow", 100 * share);
    says.add(against + part + ".");
    says.add(gauges(tap.name()));
  }

  private String gauges(String tap) {
    List<String> told = new ArrayList<>();
    for (Sign sign : signs) {
      if (sign.what() == Sign.What.ENGINE && counts(sign.part(), tap)) {
        told.add(String.format(Locale.ROOT, "the %s %s", sign.part(), shift(sign)));
      }
    }
    return told.isEmpty()
        ? "The file has no engine gauge that counts this tap: what exhaust temperature and fuel flow"
            + " do is not said."
        : "By the file's shift for air that is drawn, "
            + String.join("; ", told)
            + "; what the hot air itself does comes on top.";
  }

  private String shift(Sign sign) {
    Dimension dimension = sign.dimension();
    String size = c.style().print(Math.abs(sign.change()), dimension);
    if (size.equals(c.style().print(0, dimension))) {
      return "does not move";
    }
    return "stands " + size + (sign.change() > 0 ? " higher" : " lower");
  }

  private boolean counts(String gauge, String tap) {
    return c.is().network().parts().stream()
        .anyMatch(
            part ->
                part instanceof EngineGauge engine
                    && part.name().equals(gauge)
                    && engine.taps().contains(tap));
  }
}
