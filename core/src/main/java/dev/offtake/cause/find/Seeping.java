package dev.offtake.cause.find;

import dev.offtake.network.Network;
import dev.offtake.part.Leak;
import dev.offtake.part.Part;
import dev.offtake.part.Regulator;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * A system whose regulated ducts let out a little air, as those of every engine do. Where users
 * take air it changes nothing that a gauge could show. Where nothing takes any it decides what a
 * needle shows: without it the least leak of a regulator's seat pumps the duct up to its relief
 * valve, and every healthy engine would stand out against that.
 */
final class Seeping {
  private Seeping() {}

  static BleedSystem of(BleedSystem system) {
    List<Part> parts = new ArrayList<>(system.network().parts());
    for (Part part : system.network().parts()) {
      if (part instanceof Regulator regulator) {
        String outlet = regulator.legs().get(0).to();
        parts.add(Leak.seep(part.name() + " outlet joints", outlet, Found.SEEP));
      }
    }
    return system.with(new Network(system.network().points(), parts));
  }
}
