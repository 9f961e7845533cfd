package dev.offtake.time;

import dev.offtake.network.Equations;
import dev.offtake.network.Network;
import dev.offtake.part.Conditions;
import dev.offtake.part.Parameter;
import dev.offtake.solve.Setup;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Writes what a drive asks at an instant into equations. Allocates nothing within a span whose
 * conditions do not move.
 */
final class Timetable {
  private final Equations equations;
  private final Stretch[] stretches;
  private Stretch now;
  private double written = Double.NaN;

  /** A span on the clock, with the parameters that it moves. */
  private static final class Stretch {
    final double from;
    final double seconds;
    final Setup begins;
    final Setup ends;
    final Setup.PartNumber[] names;
    final int[] at;
    final double[] first;
    final double[] last;
    final boolean still;

    Stretch(double from, Drive.Span span, Setup.PartNumber[] names, int[] at, double[] healthy) {
      this.from = from;
      seconds = span.seconds();
      begins = span.begins();
      ends = span.ends();
      this.names = names;
      this.at = at;
      first = new double[at.length];
      last = new double[at.length];
      boolean moves = false;
      for (int i = 0; i < at.length; i++) {
        first[i] = begins.changed().getOrDefault(names[i], healthy[i]);
        last[i] = ends.changed().getOrDefault(names[i], healthy[i]);
        moves |= first[i] != last[i];
      }
      still = !moves && begins.conditions().equals(ends.conditions());
    }

    double share(double time) {
      return seconds > 0 ? Math.max(0, Math.min(1, (time - from) / seconds)) : 1;
    }

    double number(int i, double share) {
      return share >= 1 ? last[i] : first[i] + share * (last[i] - first[i]);
    }

    Conditions conditions(double share) {
      return share <= 0
          ? begins.conditions()
          : share >= 1 ? ends.conditions() : begins.conditions().toward(ends.conditions(), share);
    }

    Setup setup(double time) {
      if (still) {
        return begins;
      }
      double share = share(time);
      Map<Setup.PartNumber, Double> changed = new HashMap<>();
      for (int i = 0; i < names.length; i++) {
        if (begins.changed().containsKey(names[i]) || ends.changed().containsKey(names[i])) {
          changed.put(names[i], number(i, share));
        }
      }
      return new Setup(conditions(share), begins.positions(), begins.locks(), changed);
    }
  }

  Timetable(Equations equations, Drive drive) {
    this.equations = equations;
    Set<Setup.PartNumber> names = new LinkedHashSet<>(drive.start().changed().keySet());
    for (Drive.Span span : drive.spans()) {
      names.addAll(span.begins().changed().keySet());
      names.addAll(span.ends().changed().keySet());
    }
    Setup.PartNumber[] all = names.toArray(Setup.PartNumber[]::new);
    int[] at = new int[all.length];
    double[] healthy = new double[all.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = position(all[i]);
      healthy[i] = healthy(all[i]);
    }
    List<Drive.Span> spans = drive.spans();
    stretches = new Stretch[spans.size() + 1];
    stretches[0] =
        new Stretch(0, new Drive.Span(0, drive.start(), drive.start()), all, at, healthy);
    double from = 0;
    for (int i = 0; i < spans.size(); i++) {
      stretches[i + 1] = new Stretch(from, spans.get(i), all, at, healthy);
      from += spans.get(i).seconds();
    }
    now = stretches[0];
  }

  private int position(Setup.PartNumber name) {
    int part = equations.network().part(name.part());
    int at = part < 0 ? -1 : equations.parameter(part, name.parameter());
    if (at < 0) {
      throw new IllegalArgumentException("no such number: " + name);
    }
    return at;
  }

  private double healthy(Setup.PartNumber name) {
    Network network = equations.network();
    return network.parts().get(network.part(name.part())).parameters().stream()
        .filter(parameter -> parameter.name().equals(name.parameter()))
        .mapToDouble(Parameter::value)
        .findFirst()
        .orElseThrow();
  }

  /** Number of stretches; the first has no length and is the start. */
  int count() {
    return stretches.length;
  }

  /** When a stretch begins, s. */
  double from(int stretch) {
    return stretches[stretch].from;
  }

  /** When a stretch ends, s. */
  double to(int stretch) {
    return stretches[stretch].from + stretches[stretch].seconds;
  }

  /** From now on a stretch counts. */
  void enter(int stretch) {
    now = stretches[stretch];
    written = Double.NaN;
  }

  /** What is asked at an instant of a stretch. */
  Setup setup(int stretch, double time) {
    return stretches[stretch].setup(time);
  }

  /** Writes what is asked at an instant of the present stretch. */
  void set(double time) {
    if (written == time || (now.still && !Double.isNaN(written))) {
      return;
    }
    written = time;
    double share = now.share(time);
    double[] parameters = equations.evaluation().parameters;
    for (int i = 0; i < now.at.length; i++) {
      parameters[now.at[i]] = now.number(i, share);
    }
    equations.setConditions(now.conditions(share));
    equations.refreshBoundary();
  }

  /** Makes sure that boundary points follow controls that changed. */
  void refresh() {
    equations.refreshBoundary();
  }
}
