package dev.offtake.part;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.quantity.Stated;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The kind <em>engine gauge</em>: exhaust temperature, fuel flow or core speed, which move while
 * the engine gives bleed air.
 *
 * <p>Shift = stated shift · percent of core flow drawn, added up over the taps. The engine itself
 * is not modelled: the shift is against the same engine at the same power without bleed, which is
 * what a crew sees when it compares two engines or moves a bleed switch.
 *
 * @param name full name
 * @param taps full names of the taps whose air counts
 * @param parameters shift for each percent of core flow, and how much too high the gauge reads: K,
 *     kg/s or a share of full speed
 */
public record EngineGauge(String name, List<String> taps, List<Parameter> parameters)
    implements Watcher {
  private static final String EACH = " per 1 % of core flow";
  private static final String EXHAUST = "exhaust temperature";
  private static final String FUEL = "fuel flow";
  private static final String CORE = "core speed";

  /** The kind. */
  public static final Kind KIND =
      new SimpleKind(
          "engine gauge",
          "Shows how far bleed air moves the exhaust temperature, the fuel flow or the core speed.",
          "gauge",
          List.of(
              Key.choice("shows", List.of(EXHAUST, FUEL, CORE), "What it shows."),
              Key.of(
                      "shifts",
                      Form.TEXT,
                      "3 degF" + EACH,
                      "How far the needle moves for each percent of core flow that is drawn.")
                  .must(),
              Key.of(
                      "counts",
                      Form.PART,
                      "mid tap",
                      "A tap whose air counts; its file line `core flow` says what a percent is.")
                  .must(),
              Key.of("counts also", Form.PART, "high tap", "Another tap of the same engine.")),
          List.of("gauge"),
          EngineGauge::of);

  private static final int BIAS = 1;

  /** No reading shifts by more for a percent of bleed: a slip of the pen, SI. */
  private static final double MOST_KELVIN = 100;

  private static final double MOST_FLOW = 1;
  private static final double MOST_SHARE = 0.1;

  /** Keeps its lists. */
  public EngineGauge {
    taps = List.copyOf(taps);
    parameters = List.copyOf(parameters);
  }

  private static EngineGauge of(Facts facts) {
    Dimension dimension = dimension(facts.choice("shows"));
    double most = most(dimension);
    @Nullable Stated shift = shift(facts, dimension);
    Parameter each =
        shift == null
            ? Parameter.exactly("shift", 0, -most, most, dimension, "gauge")
            : new Parameter(
                "shift",
                shift.nominal(),
                shift.low(),
                shift.high(),
                -most,
                most,
                dimension,
                "gauge");
    List<String> taps =
        Stream.of(facts.text("counts"), facts.text("counts also"))
            .filter(tap -> !tap.isEmpty())
            .toList();
    Parameter bias = Parameter.exactly("bias", 0, -most, most, dimension, "gauge");
    return new EngineGauge(facts.name(), taps, List.of(each, bias));
  }

  private static Dimension dimension(String shows) {
    return switch (shows) {
      case FUEL -> Dimension.MASS_FLOW;
      case CORE -> Dimension.SHARE;
      default -> Dimension.TEMPERATURE_DIFFERENCE;
    };
  }

  private static double most(Dimension dimension) {
    return switch (dimension) {
      case MASS_FLOW -> MOST_FLOW;
      case SHARE -> MOST_SHARE;
      default -> MOST_KELVIN;
    };
  }

  private static @Nullable Stated shift(Facts facts, Dimension dimension) {
    String text = facts.text("shifts");
    if (!text.endsWith(EACH)) {
      facts.problem("shifts", "It does not say for how much air", "Write `3 degF" + EACH + "`");
      return null;
    }
    try {
      String value = text.substring(0, text.length() - EACH.length());
      Stated shift = QuantityReader.read(value, dimension);
      double most = most(dimension);
      if (shift.low() >= -most && shift.high() <= most) {
        return shift;
      }
      facts.problem("shifts", "No engine shifts that far", "Check the number and its unit");
    } catch (QuantityProblem problem) {
      facts.problem("shifts", problem.wrong(), problem.mend());
    }
    return null;
  }

  /** What it shows. */
  public String shows() {
    return switch (parameters.get(0).dimension()) {
      case MASS_FLOW -> FUEL;
      case SHARE -> CORE;
      default -> EXHAUST;
    };
  }

  /**
   * Share of core flow that its taps draw; NaN where a tap does not know the core flow.
   *
   * @param view the solved state
   */
  public double drawn(View view) {
    double drawn = 0;
    for (String tap : taps) {
      drawn += view.observed(tap, Tap.SHARE_OF_CORE);
    }
    return drawn;
  }

  /**
   * How far the needle stands from where that of a sound gauge would stand without bleed: K, kg/s
   * or a share of full speed; NaN where a tap does not know the core flow.
   *
   * @param view the solved state
   */
  public double shift(View view) {
    return view.parameter(0) * 100 * drawn(view) + view.parameter(BIAS);
  }

  @Override
  public List<String> looksAt() {
    return taps;
  }

  @Override
  public List<Mode> modes() {
    return List.of(
        reads("reads high", "It reads more than there is", 1),
        reads("reads low", "It reads less than there is", -1));
  }

  private Mode reads(String name, String means, int sign) {
    Dimension dimension = parameters.get(BIAS).dimension();
    double most = most(dimension);
    return Mode.named(name, "gauge", means)
        .extent(new Extent("by how much", dimension, 0.01 * most, 0.1 * most, most))
        .puts("bias", by -> sign * by)
        .perMillionHours(20)
        .inspected(
            Inspection.look(
                "Compare with the other engine and with the last runs", Access.ENGINE_RUN, 10));
  }

  @Override
  public String kind() {
    return KIND.name();
  }

  @Override
  public Doing doing(View view) {
    double shift = shift(view);
    String air = String.join(" and ", taps);
    if (Double.isNaN(shift)) {
      String why = "a line `core flow` is missing at " + air;
      return new Doing("not known", "not known", why);
    }
    Dimension dimension = parameters.get(0).dimension();
    String size = view.print(Math.abs(shift), dimension);
    String each = view.print(view.parameter(0), dimension);
    String draws = taps.size() == 1 ? " draws " : " draw ";
    String share = String.format(Locale.ROOT, "%.1f %% of core flow, ", 100 * drawn(view));
    double bias = view.parameter(BIAS);
    String wrong = bias > 0 ? " too high" : " too low";
    String off =
        bias == 0
            ? ""
            : "; the gauge itself reads " + view.print(Math.abs(bias), dimension) + wrong;
    String why = air + draws + share + each + " for each percent" + off;
    if (shift == 0) {
      return new Doing("unmoved", shows() + " as without bleed", why);
    }
    String word = shows() + " " + size + (shift > 0 ? " up" : " down");
    return new Doing(shift > 0 ? "up" : "down", word, why);
  }
}
