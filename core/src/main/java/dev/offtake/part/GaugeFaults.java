package dev.offtake.part;

/** What is wrong with a gauge, in words. */
final class GaugeFaults {
  private final Gauge gauge;
  private final View view;

  GaugeFaults(Gauge gauge, View view) {
    this.gauge = gauge;
    this.view = view;
  }

  /** Each fault behind a semicolon; empty for a sound gauge. */
  String words() {
    StringBuilder all = new StringBuilder();
    Parameter bias = gauge.parameters().get(Gauge.BIAS);
    double now = view.parameter(Gauge.BIAS);
    if (now < bias.low() || now > bias.high()) {
      all.append("; it reads ").append(off(now));
    }
    if (view.parameter(Gauge.CROSSED) > 0) {
      all.append("; its lines are crossed");
    }
    for (int i = 0; i < gauge.needles().size(); i++) {
      needle(i, all);
    }
    return all.toString();
  }

  private void needle(int i, StringBuilder all) {
    int first = Gauge.first(i);
    String mark = gauge.needles().get(i).mark();
    String needle = mark.isEmpty() ? "its needle" : "needle " + mark;
    if (view.parameter(first + Gauge.HELD) > 0) {
      all.append("; ").append(needle).append(" no longer moves");
      return;
    }
    double offset = view.parameter(first + Gauge.OFFSET);
    if (offset != 0) {
      all.append("; ").append(needle).append(" reads ").append(off(offset));
    }
    double loss = view.parameter(first + Gauge.LOSS);
    if (loss > 0) {
      String feels = view.gauge(view.sensed(gauge.needles().get(i).reads().point()));
      all.append("; the line of ").append(needle).append(" loses ");
      all.append(Math.round(100 * loss)).append(" % of ").append(feels);
    }
  }

  private String off(double by) {
    String size = view.print(Math.abs(by), gauge.difference());
    return size + (by > 0 ? " too high" : " too low");
  }
}
