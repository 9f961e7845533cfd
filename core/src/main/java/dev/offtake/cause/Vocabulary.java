package dev.offtake.cause;

import dev.offtake.part.EngineGauge;
import dev.offtake.part.Gauge;
import dev.offtake.part.Kind;
import dev.offtake.part.Kinds;
import dev.offtake.part.Leg;
import dev.offtake.part.Part;
import dev.offtake.part.Role;
import dev.offtake.part.TestPort;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What can be read on a system, by every name that people use for it.
 *
 * <p>A needle is called by what it reads ({@code left duct pressure}), by the point alone ({@code
 * left duct}), or by gauge and mark ({@code duct gauge L}); everything else by its full name, the
 * position of a part with or without the word {@code position}. Upper and lower case are alike. The
 * end of a name will do, after its side where it has one, as long as only one thing ends so.
 */
final class Vocabulary {
  private static final String POSITION = " position";

  private final List<String> sides;
  private final Map<String, Set<About>> names = new LinkedHashMap<>();
  private final Map<String, String> ports = new LinkedHashMap<>();
  private final List<About> asked = new ArrayList<>();

  Vocabulary(BleedSystem system) {
    sides = system.sides();
    Map<String, Kind> kinds = new LinkedHashMap<>();
    Kinds.all().forEach(kind -> kinds.put(kind.name(), kind));
    List<Part> parts = system.parts();
    parts.forEach(part -> needles(part, parts));
    parts.forEach(part -> rest(part, kinds.get(part.kind())));
    for (Part part : parts) {
      part.legs().stream()
          .flatMap(leg -> List.of(leg.from(), leg.to()).stream())
          .forEach(this::skin);
    }
  }

  private void needles(Part part, List<Part> parts) {
    if (!(part instanceof Gauge gauge)) {
      return;
    }
    for (int i = 0; i < gauge.needles().size(); i++) {
      String reads = gauge.needles().get(i).reads().name();
      String mark = gauge.needles().get(i).mark();
      String own = mark.isEmpty() ? gauge.name() : gauge.name() + " " + mark;
      boolean alone = parts.stream().mapToLong(other -> reading(other, reads)).sum() == 1;
      About needle = new About.Needle(alone ? reads : own, gauge, i);
      asked.add(needle);
      name(own, needle);
      name(reads, needle);
      name(gauge.needles().get(i).reads().point(), needle);
    }
  }

  private static long reading(Part part, String what) {
    return part instanceof Gauge gauge
        ? gauge.needles().stream().filter(needle -> needle.reads().name().equals(what)).count()
        : 0;
  }

  private void rest(Part part, @Nullable Kind kind) {
    List<String> positions = kind == null ? List.of() : kind.positions();
    if (part.kind().equals(TestPort.KIND.name())) {
      port(part);
    } else if (part instanceof EngineGauge gauge) {
      add(part.name(), new About.EngineNeedle(gauge));
    } else if (positions.contains("lit")) {
      add(part.name(), new About.Lamp(part.name()));
    } else if (part.role() == Role.VALVE || !positions.isEmpty()) {
      About place = new About.Position(part.name(), part.role() == Role.VALVE, positions);
      name(part.name(), place);
      name(part.name() + POSITION, place);
    }
  }

  private void port(Part part) {
    String point = part.legs().get(0).from();
    ports.putIfAbsent(point, part.name());
    for (boolean hot : new boolean[] {false, true}) {
      About.Port port = port(point, part.name(), hot);
      name(port.name(), port);
      String value = point + (hot ? " temperature" : " pressure");
      if (!names.containsKey(key(value))) {
        name(value, port);
      }
    }
  }

  private static About.Port port(String point, String port, boolean temperature) {
    String name = port.isEmpty() ? point + (temperature ? "" : " pressure") : port;
    return new About.Port(name + (temperature ? " temperature" : ""), port, point, temperature);
  }

  /** The place of a test gauge that was used where a gauge of the system reads. */
  About.Scaled fitted(About.Scaled about) {
    return about instanceof About.Port
        ? about
        : port(about.point(), ports.getOrDefault(about.point(), ""), about.temperature());
  }

  private void skin(String point) {
    if (!point.equals(Leg.AMBIENT)) {
      About skin = new About.Skin(point);
      name(skin.name(), skin);
    }
  }

  private void add(String name, About about) {
    asked.add(about);
    name(name, about);
  }

  private void name(String name, About about) {
    names.computeIfAbsent(key(name), k -> new LinkedHashSet<>()).add(about);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
  }

  /** What a person is asked for one by one: needles, engine gauges and lights, as in the file. */
  List<About> asked() {
    return List.copyOf(asked);
  }

  /**
   * What a name may mean: one thing, several, or none.
   *
   * @param name as written
   */
  List<About> find(String name) {
    Set<About> exact = names.get(key(name));
    if (exact != null) {
      return List.copyOf(exact);
    }
    Set<About> ending = new LinkedHashSet<>();
    names.forEach(
        (known, abouts) -> {
          if (ends(known, key(name))) {
            ending.addAll(abouts);
          }
        });
    return List.copyOf(ending);
  }

  /** Whether a name ends with what was written, on the side that was written with it. */
  private boolean ends(String known, String written) {
    for (String side : sides) {
      String begin = key(side) + " ";
      if (written.startsWith(begin)) {
        return known.startsWith(begin) && known.endsWith(" " + written.substring(begin.length()));
      }
    }
    return known.endsWith(" " + written);
  }

  /** Sides on which there is something of this name. */
  List<String> sidesOf(String name) {
    return sides.stream().filter(side -> names.containsKey(key(side + " " + name))).toList();
  }

  /** All names, for the nearest word. */
  Collection<String> known() {
    return names.keySet();
  }
}
