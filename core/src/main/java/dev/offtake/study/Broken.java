package dev.offtake.study;

import dev.offtake.network.Network;
import dev.offtake.part.Mode;
import dev.offtake.part.Parameter;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A system with faults in it: the healthy network as it is where numbers are enough, else one in
 * which parts are built differently.
 *
 * @param network to be solved
 * @param faults what is broken
 * @param changed numbers that differ from the healthy ones
 */
public record Broken(Network network, List<Fault> faults, Map<Setup.PartNumber, Double> changed) {

  /** Keeps its lists. */
  public Broken {
    faults = List.copyOf(faults);
    changed = Map.copyOf(changed);
  }

  /** Faults that cannot be there together. */
  public static final class Contradiction extends RuntimeException {
    private static final long serialVersionUID = 1;

    Contradiction(String says) {
      super(says);
    }
  }

  /**
   * Breaks a healthy network.
   *
   * @param healthy the network
   * @param sides names of its sides, for what is done to both
   * @param faults what is broken
   * @throws Contradiction when two faults change the same number or rebuild the same part
   */
  public static Broken of(Network healthy, List<String> sides, List<Fault> faults) {
    Network network = healthy;
    Map<String, Fault> rebuilt = new LinkedHashMap<>();
    for (Fault fault : faults) {
      network = rebuild(network, sides, fault, rebuilt);
    }
    return new Broken(network, faults, changed(network, faults));
  }

  /**
   * The same failures to other extents, in the same network.
   *
   * @param other the same parts and modes in the same order
   */
  public Broken to(List<Fault> other) {
    return new Broken(network, other, changed(network, other));
  }

  private static Map<Setup.PartNumber, Double> changed(Network network, List<Fault> faults) {
    Map<Setup.PartNumber, Fault> by = new LinkedHashMap<>();
    Map<Setup.PartNumber, Double> changed = new LinkedHashMap<>();
    for (Fault fault : faults) {
      for (Mode.Shift shift : fault.mode().shifts()) {
        Setup.PartNumber number =
            new Setup.PartNumber(fault.part().name() + shift.part(), shift.parameter());
        Fault other = by.putIfAbsent(number, fault);
        if (other != null) {
          throw contradiction(other, fault);
        }
        changed.put(number, broken(network, number, shift, fault.extent()));
      }
    }
    return changed;
  }

  /**
   * The fault that changes a number, so that nobody can move it as well.
   *
   * @param healthy the network that was broken
   * @param number of a part of it
   * @return empty where the number is as it was
   */
  public Optional<Fault> changing(Network healthy, Setup.PartNumber number) {
    boolean same = value(network, number).equals(value(healthy, number));
    if (same && !changed.containsKey(number)) {
      return Optional.empty();
    }
    return faults.stream()
        .filter(fault -> fault.part().name().equals(number.part()))
        .findFirst()
        .or(() -> faults.stream().findFirst());
  }

  private static Optional<Double> value(Network network, Setup.PartNumber number) {
    int at = network.part(number.part());
    return network.parts().get(at).parameters().stream()
        .filter(parameter -> parameter.name().equals(number.parameter()))
        .findFirst()
        .map(Parameter::value);
  }

  private static Contradiction contradiction(Fault one, Fault two) {
    return new Contradiction("\"" + one.name() + "\" and \"" + two.name() + "\"");
  }

  private static Network rebuild(
      Network network, List<String> sides, Fault fault, Map<String, Fault> rebuilt) {
    Mode.Rebuild rebuild = fault.mode().rebuild();
    if (rebuild == null) {
      return network;
    }
    List<Part> parts = new ArrayList<>(network.parts());
    for (Part part : rebuild.of(fault.part(), Twins.of(network.parts(), sides, fault.part()))) {
      Fault other = rebuilt.putIfAbsent(part.name(), fault);
      if (other != null) {
        throw contradiction(other, fault);
      }
      int at = network.part(part.name());
      if (at >= 0) {
        parts.set(at, part);
      } else {
        parts.add(part);
      }
    }
    return new Network(network.points(), parts);
  }

  private static double broken(
      Network network, Setup.PartNumber number, Mode.Shift shift, double extent) {
    int at = network.part(number.part());
    return network.parts().get(at).parameters().stream()
        .filter(parameter -> parameter.name().equals(number.parameter()))
        .findFirst()
        .map(
            parameter -> {
              double value = shift.becomes().of(parameter.value(), extent);
              return Math.max(parameter.min(), Math.min(parameter.max(), value));
            })
        .orElseThrow(() -> new IllegalArgumentException("no such number: " + number));
  }

  /** The question about the healthy system, asked of the broken one. */
  public Setup setup(Setup healthy) {
    Map<Setup.PartNumber, Double> all = new LinkedHashMap<>(healthy.changed());
    all.putAll(changed);
    return new Setup(healthy.conditions(), healthy.positions(), healthy.locks(), all);
  }
}
