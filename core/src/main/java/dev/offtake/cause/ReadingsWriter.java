package dev.offtake.cause;

import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Stated;
import dev.offtake.quantity.Unit;
import dev.offtake.quantity.Units;
import dev.offtake.system.BleedSystem;
import dev.offtake.system.Setting;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Writes readings as YAML, so that the same readings are read again. */
public final class ReadingsWriter {
  /** What needs no quotes: begins with a letter or digit and holds no sign that YAML means. */
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}0-9](?:[\\p{L}0-9 .,;/%()+°²_-]*[\\p{L}0-9.%)°²])?");

  private final BleedSystem system;
  private final StringBuilder out = new StringBuilder();

  private ReadingsWriter(BleedSystem system) {
    this.system = system;
  }

  /**
   * The text of a file.
   *
   * @param readings what to write
   * @param system what they are of
   */
  public static String yaml(Readings readings, BleedSystem system) {
    ReadingsWriter writer = new ReadingsWriter(system);
    writer.all(readings);
    return writer.out.toString();
  }

  private void all(Readings readings) {
    line(0, YamlReadings.VERSION, "1");
    said(0, YamlReadings.SYSTEM, readings.system());
    said(0, YamlReadings.SQUAWK, readings.squawk());
    said(0, YamlReadings.ITEM, readings.item());
    said(0, YamlReadings.DATE, readings.date().map(LocalDate::toString).orElse(""));
    if (!readings.gauges().isEmpty()) {
      begin(0, YamlReadings.GAUGES);
      readings.gauges().forEach(this::gauge);
    }
    readings.day().ifPresent(day -> day(0, day));
    if (!readings.occasions().isEmpty()) {
      begin(0, YamlReadings.READINGS);
      readings.occasions().forEach(this::occasion);
    }
    if (!readings.seen().isEmpty()) {
      begin(0, YamlReadings.SEEN);
      readings.seen().forEach(seen -> line(1, seen.part(), seen.words()));
    }
  }

  private void gauge(UsedGauge gauge) {
    UsedGauge.Said said = gauge.said();
    int before = out.length();
    begin(1, gauge.name());
    int begun = out.length();
    said(2, UsedGaugeReader.GOOD, said.goodTo());
    if (!said.constant().isEmpty() || !said.each().isEmpty()) {
      begin(2, UsedGaugeReader.GOOD);
      said(3, UsedGaugeReader.CONSTANT, said.constant());
      said(3, UsedGaugeReader.EACH, said.each());
    }
    said(2, UsedGaugeReader.STEP, said.step());
    said(2, UsedGaugeReader.SCALE, gauge.scale().map(Stated::text).orElse(""));
    said(2, UsedGaugeReader.DUE, gauge.due().map(LocalDate::toString).orElse(""));
    said(2, UsedGaugeReader.SHARES, gauge.sharesSender());
    if (out.length() == begun) {
      out.setLength(before);
      out.append("  ").append(quoted(gauge.name())).append(": {}\n");
    }
  }

  private void day(int indent, SaidDay day) {
    if (!day.text().isEmpty()) {
      line(indent, YamlReadings.DAY, day.text());
      return;
    }
    begin(indent, YamlReadings.DAY);
    day.lines().forEach((key, value) -> line(indent + 1, key, value));
  }

  private void occasion(Occasion occasion) {
    int start = out.length();
    power(occasion.power());
    said(2, RowReader.LINE_UP, occasion.lineUp());
    if (!occasion.set().isEmpty()) {
      begin(2, RowReader.SET);
      occasion.set().forEach((name, position) -> line(3, name, position));
    }
    occasion.ownDay().ifPresent(day -> day(2, day));
    said(2, RowReader.TRIP, occasion.trip().words());
    if (occasion.teller() == Occasion.Teller.CREW) {
      line(2, RowReader.SAID_BY, HeadReader.CREW);
    }
    if (occasion.notDuplicated()) {
      out.append("    ").append(OccasionReader.NOT_DUPLICATED).append(":\n");
    }
    occasion.readings().forEach(this::reading);
    out.setCharAt(start + 2, '-'); // the first line begins the item
  }

  /** The name alone where the speeds are those of the file. */
  private void power(Setting power) {
    Setting file = system.settings().get(power.name());
    if (power.equals(file)) {
      line(2, RowReader.AT, power.name());
      return;
    }
    begin(2, RowReader.AT);
    if (file != null) {
      line(3, RowReader.POWER, power.name());
    }
    line(3, RowReader.CORE, percent(power.core()));
    if (!Double.isNaN(power.fan())) {
      line(3, RowReader.FAN, percent(power.fan()));
    }
  }

  /** The shortest percentage that is read as this share again. */
  private static String percent(double share) {
    BigDecimal exact = BigDecimal.valueOf(share).movePointRight(2);
    Unit percent = Units.of(Dimension.SHARE).get(0);
    for (int decimals = 0; decimals < exact.scale(); decimals++) {
      BigDecimal shorter = exact.setScale(decimals, RoundingMode.HALF_UP);
      if (percent.toSi(shorter.doubleValue()) == share) {
        return shorter.toPlainString() + " %";
      }
    }
    return exact.toPlainString() + " %";
  }

  private void reading(Reading reading) {
    String with = reading.with().map(gauge -> " with " + gauge.name()).orElse("");
    String note = reading.note().isEmpty() ? "" : "; " + reading.note();
    line(2, reading.about().name(), reading.value().words() + with + note);
  }

  private void said(int indent, String key, String value) {
    if (!value.isEmpty()) {
      line(indent, key, value);
    }
  }

  private void begin(int indent, String key) {
    out.append("  ".repeat(indent)).append(quoted(key)).append(":\n");
  }

  private void line(int indent, String key, String value) {
    out.append("  ".repeat(indent)).append(quoted(key)).append(": ");
    out.append(quoted(value)).append('\n');
  }

  private static String quoted(String text) {
    if (PLAIN.matcher(text).matches()) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"', '\\' -> quoted.append('\\').append(c);
        case '\n' -> quoted.append("\\n");
        case '\t' -> quoted.append("\\t");
        default -> quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }
}
