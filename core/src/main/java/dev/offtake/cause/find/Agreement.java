package dev.offtake.cause.find;

import dev.offtake.cause.About;
import dev.offtake.cause.Occasion;
import dev.offtake.cause.Reading;
import dev.offtake.cause.UsedGauge;
import dev.offtake.cause.Value;
import dev.offtake.part.Gauge;
import dev.offtake.quantity.Stated;
import dev.offtake.study.Notice;
import java.util.Optional;

/** How well a forecast agrees with one reading. */
final class Agreement {
  /** A valve whose opening is told by eye, share: an assumption. */
  private static final double BY_EYE = 0.12;

  /** Skin of a duct against the air in it, K (25 °F): an assumption. */
  private static final double SKIN = 25 / 1.8;

  /** Wider than which no test gauge is, Pa (100 psi) and K (300 °F): assumptions. */
  private static final double USUAL_SCALE = 100 * 6894.757;

  private static final double USUAL_HOT_SCALE = 300 / 1.8;

  private final Errors errors;
  private final Occasion.Teller teller;
  private final Reading reading;
  private final double usual;
  private final boolean hot;
  private final double each;
  private final double constant;
  private final double step;

  Agreement(Errors errors, Occasion.Teller teller, Reading reading, double usual) {
    this.errors = errors;
    this.teller = teller;
    this.reading = reading;
    this.usual = usual;
    hot =
        reading.about() instanceof About.Scaled scaled
            ? scaled.temperature()
            : reading.about() instanceof About.Skin;
    Optional<UsedGauge> with = reading.with();
    if (with.isPresent()) {
      each = known(with.get().each(), (hot ? Unknowns.THERMOMETER : Unknowns.TEST_GAUGE) / 3);
      constant = known(with.get().constant(), hot ? Unknowns.THERMOMETER : Unknowns.TEST_GAUGE);
      step = with.get().step();
    } else if (reading.about() instanceof About.Needle needle) {
      each = needle.gauge().each();
      constant = needle.gauge().parameters().get(0).high();
      step = needle.gauge().step();
    } else {
      each = hot ? Unknowns.THERMOMETER / 3 : Unknowns.TEST_GAUGE / 3;
      constant = hot ? Unknowns.THERMOMETER : Unknowns.TEST_GAUGE;
      step = 0;
    }
  }

  private static double known(double value, double otherwise) {
    return Double.isNaN(value) ? otherwise : value;
  }

  /** Empty for what says nothing of any cause. */
  Optional<Likelihood> likelihood() {
    Value value = reading.value();
    if (Double.isNaN(usual) || value instanceof Value.NotRead) {
      return Optional.empty();
    }
    if (value instanceof Value.Figure figure) {
      return Optional.of(figure(figure.stated()));
    }
    if (value instanceof Value.Word word) {
      return Optional.of(Words.level(word, usual, band()));
    }
    if (value instanceof Value.Swinging swinging) {
      return swinging.between().map(this::figure);
    }
    if (value instanceof Value.Pegged pegged) {
      return pegged(pegged);
    }
    if (value instanceof Value.Lit lit) {
      return Optional.of(Words.either(lit.on()));
    }
    if (value instanceof Value.Stands stands) {
      return Optional.of(stands(stands));
    }
    if (value instanceof Value.Felt felt) {
      return Optional.of(Words.felt(felt));
    }
    if (value instanceof Value.Against against) {
      return Optional.of(against(against));
    }
    return value instanceof Value.Moved moved ? Optional.of(moved(moved)) : Optional.empty();
  }

  private Likelihood figure(Stated stated) {
    double spread = (stated.high() - stated.low()) / Math.sqrt(12);
    return measured(stated.nominal(), spread, scale());
  }

  private Likelihood measured(double value, double spread, double scale) {
    double reader = each * each + step * step / 12 + spread * spread + crew() * crew();
    if (reading.about() instanceof About.Skin) {
      reader += SKIN * SKIN;
    }
    double own = reader + constant * constant / 3;
    double model = errors.of(hot, larger(value));
    return new Likelihood.Measured(value, reader + model * model, reader, own, scale);
  }

  private double larger(double value) {
    return Math.max(Math.abs(value), Math.abs(usual));
  }

  /** What a crew says by heart is less sure than a needle that is read. */
  private double crew() {
    return teller == Occasion.Teller.CREW ? band() : 0;
  }

  private double band() {
    double least = hot ? Notice.CREW_TEMPERATURE : Notice.CREW_PRESSURE;
    return Math.max(least, 2 * (constant + each));
  }

  private double scale() {
    if (reading.with().isEmpty() && reading.about() instanceof About.Needle needle) {
      Gauge.Scale scale = needle.gauge().scale();
      double width = scale.high() - scale.low();
      if (!Double.isInfinite(width)) {
        return width;
      }
    }
    return hot ? USUAL_HOT_SCALE : USUAL_SCALE;
  }

  private Optional<Likelihood> pegged(Value.Pegged pegged) {
    if (!(reading.about() instanceof About.Needle needle)) {
      return Optional.empty();
    }
    Gauge.Scale scale = needle.gauge().scale();
    double middle = (scale.high() + scale.low()) / 2;
    boolean high = pegged == Value.Pegged.HIGH || (pegged == Value.Pegged.UNSAID && usual > middle);
    double end = high ? scale.high() : scale.low();
    double deviation = Math.sqrt(each * each + constant * constant / 3);
    return Double.isInfinite(end)
        ? Optional.empty()
        : Optional.of(Words.pegged(end, high, Math.max(deviation, 1)));
  }

  private Likelihood stands(Value.Stands stands) {
    if (!Double.isNaN(stands.open())) {
      double variance = BY_EYE * BY_EYE;
      return new Likelihood.Measured(stands.open(), variance, variance, variance, 1);
    }
    return stands.words().equals("part open")
        ? new Likelihood.Said(open -> open > 0.02 && open < 0.98 ? 0.9 : 0.1, 0.5, false)
        : Words.either(true);
  }

  private Likelihood against(Value.Against against) {
    if (against.by().isPresent()) {
      double by = against.by().get().nominal();
      double value = against.sense() == Value.Sense.BELOW ? -by : by;
      return measured(value, 0, scale());
    }
    return Words.compared(against.sense(), band());
  }

  private Likelihood moved(Value.Moved moved) {
    double unit =
        switch (((About.EngineNeedle) reading.about()).dimension()) {
          case MASS_FLOW -> 100 * 0.45359237 / 3600;
          case SHARE -> 0.005;
          default -> Notice.CREW_TEMPERATURE;
        };
    if (moved.by().isPresent()) {
      double by = moved.by().get().nominal();
      double value = moved.move() == Value.Move.DOWN ? -by : by;
      double variance = unit * unit / 4 + 0.04 * value * value;
      return new Likelihood.Measured(value, variance, variance, variance, 40 * unit);
    }
    return switch (moved.move()) {
      case UP -> Words.compared(Value.Sense.ABOVE, unit / 2);
      case DOWN -> Words.compared(Value.Sense.BELOW, unit / 2);
      case UNMOVED -> Words.compared(Value.Sense.SAME, unit / 2);
    };
  }
}
