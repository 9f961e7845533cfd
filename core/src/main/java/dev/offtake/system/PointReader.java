package dev.offtake.system;

import dev.offtake.network.Network;
import dev.offtake.network.PointSpec;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.QuantityReader;
import dev.offtake.system.Draft.Sided;
import dev.offtake.system.Item.Entry;
import dev.offtake.system.Item.Section;
import dev.offtake.system.Item.Words;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads what {@code points:} says: {@code mid duct: {wall: 0.8 W/K, volume: 12 l}}. */
final class PointReader {
  private static final List<String> LINES = List.of("wall", "volume", "end");

  private final Problems problems;

  private PointReader(Problems problems) {
    this.problems = problems;
  }

  /** Joins parts at their points, with walls and volumes as declared, else the usual ones. */
  static Network network(Map<String, Sided> declared, List<Part> parts, Problems problems) {
    PointReader reader = new PointReader(problems);
    declared.values().forEach(reader::checkLines);
    Network usual = Network.of(parts);
    List<PointSpec> points =
        usual.points().stream()
            .map(spec -> reader.spec(sized(spec, parts), declared.get(spec.name())))
            .toList();
    return new Network(points, parts);
  }

  /** With half of each duct that ends there as its volume, where there is one. */
  private static PointSpec sized(PointSpec usual, List<Part> parts) {
    double volume = 0;
    for (Part part : parts) {
      if (part.airInside() > 0) {
        Leg leg = part.legs().get(0);
        volume += leg.from().equals(usual.name()) ? part.airInside() / 2 : 0;
        volume += leg.to().equals(usual.name()) ? part.airInside() / 2 : 0;
      }
    }
    return volume > 0 ? new PointSpec(usual.name(), usual.wall(), volume) : usual;
  }

  private void checkLines(Sided point) {
    if (!(point.value() instanceof Section section)) {
      return;
    }
    for (Entry line : section.entries().values()) {
      String name = line.name().text();
      if (!LINES.contains(name)) {
        problems.add(line.name(), "A point has no line `" + name + "`", Hint.of(name, LINES));
      }
    }
  }

  private PointSpec spec(PointSpec usual, @Nullable Sided declared) {
    if (declared == null || !(declared.value() instanceof Section section)) {
      return usual;
    }
    double wall = si(section, "wall", Dimension.CONDUCTANCE, usual.wall());
    double volume = si(section, "volume", Dimension.VOLUME, usual.volume());
    return new PointSpec(usual.name(), wall, volume);
  }

  private double si(Section section, String line, Dimension dimension, double usual) {
    Entry entry = section.entries().get(line);
    if (entry == null || !(entry.value() instanceof Words words)) {
      return usual;
    }
    try {
      double si = QuantityReader.read(words.text(), dimension).nominal();
      if (si > 0) {
        return si;
      }
      problems.add(words, "`" + line + "` must be above zero", "Check the number");
    } catch (QuantityProblem problem) {
      problems.add(words, problem.wrong(), problem.mend());
    }
    return usual;
  }
}
