package dev.offtake.system;

import dev.offtake.air.Atmosphere;
import dev.offtake.air.Day;
import dev.offtake.part.Conditions;
import dev.offtake.part.Leg;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.quantity.Dimension;
import dev.offtake.quantity.Style;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What is possible and looks like a slip: asked back, never refused.
 *
 * <p>A set pressure that no tap or supply can reach at any power of the file; an absolute pressure
 * that is under the air outside.
 */
final class Doubts {
  private static final String SET = "set";

  /** The most that the sources of a place give, Pa above ambient. */
  private record Most(double gauge, String source, String power) {}

  private final List<Part> parts;
  private final Context context;

  Doubts(List<Part> parts, Context context) {
    this.parts = parts;
    this.context = context;
  }

  void all(Collection<Setting> settings) {
    context.statements.stream().filter(Statement::inForce).forEach(this::underAmbient);
    parts.forEach(part -> outOfReach(part, settings));
  }

  /** Tells an absolute pressure that the air outside already has. */
  private void underAmbient(Statement statement) {
    boolean absolute = statement.stated().dimension() == Dimension.ABSOLUTE_PRESSURE;
    if (absolute && statement.stated().high() < Atmosphere.SEA_LEVEL_P) {
      String said = statement.stated().text();
      String wrong =
          statement.part() + ", " + statement.key() + ": " + said + " is under the air outside";
      String ask = "On a standard day that has 14.7 psia: is it psig, not psia?";
      context.doubts.add(statement.file(), statement.line(), wrong, ask);
    }
  }

  /** Tells a set pressure that nothing upstream can give at any power. */
  private void outOfReach(Part part, Collection<Setting> settings) {
    Parameter set =
        part.parameters().stream().filter(p -> p.name().equals(SET)).findFirst().orElse(null);
    if (set == null || part.legs().isEmpty()) {
      return;
    }
    boolean absolute = set.dimension() == Dimension.ABSOLUTE_PRESSURE;
    double low = absolute ? set.low() - Atmosphere.SEA_LEVEL_P : set.low();
    Most most = most(feeding(part), settings);
    if (most.gauge() < low) {
      context.statements.stream()
          .filter(s -> s.inForce() && s.part().equals(part.name()) && s.key().startsWith(SET))
          .findFirst()
          .ifPresent(stated -> tell(stated, most));
    }
  }

  private void tell(Statement set, Most most) {
    String wrong =
        "Set %s of %s is above what %s gives at any power: %s at most, at %s"
            .formatted(
                set.stated().text(),
                set.part(),
                most.source(),
                Style.SHOP.print(most.gauge(), Dimension.GAUGE_PRESSURE),
                most.power());
    String ask = "It would never regulate: is the set, its unit, or the tap's table wrong?";
    context.doubts.add(set.file(), set.line(), wrong, ask);
  }

  /** Parts from which air can come to a part's inlet without passing through the part itself. */
  private List<Part> feeding(Part fed) {
    Set<String> reached = new HashSet<>();
    List<String> open = new ArrayList<>();
    fed.legs().forEach(leg -> open.add(leg.from()));
    while (!open.isEmpty()) {
      String point = open.remove(open.size() - 1);
      if (point.isEmpty() || point.equals(Leg.AMBIENT) || !reached.add(point)) {
        continue;
      }
      for (Part part : parts) {
        for (Leg leg : part.name().equals(fed.name()) ? List.<Leg>of() : part.legs()) {
          if (leg.to().equals(point)) {
            open.add(leg.from());
          } else if (leg.bothWays() && leg.from().equals(point)) {
            open.add(leg.to());
          }
        }
      }
    }
    return parts.stream()
        .filter(p -> p.legs().stream().anyMatch(l -> l.fromSource() && reached.contains(l.to())))
        .toList();
  }

  private Most most(List<Part> sources, Collection<Setting> settings) {
    Most most = new Most(Double.POSITIVE_INFINITY, "", "");
    for (Part source : sources) {
      for (Setting setting : settings) {
        Day day =
            Objects.requireNonNullElse(
                context.days.get(
                    setting.day().isEmpty() ? BleedSystem.STANDARD_DAY : setting.day()),
                Day.STANDARD);
        Conditions conditions = setting.conditions(day);
        double gauge = source.mostPressure(conditions) - conditions.ambientP();
        if (Double.isFinite(gauge) && (most.source().isEmpty() || gauge > most.gauge())) {
          most = new Most(gauge, source.name(), setting.name());
        }
      }
    }
    return most;
  }
}
