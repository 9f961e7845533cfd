package dev.offtake.system;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How switches and valves stand: what holds, from weak to strong, is the file's first positions,
 * the usual line-up, the line-up of the power, the line-up asked for.
 *
 * @param positions position of each switch, by full name
 * @param locks {@code locked open} and the like, by the valve's full name
 */
public record Standing(Map<String, String> positions, Map<String, String> locks) {
  /**
   * How things stand at a power.
   *
   * @param system of the file
   * @param setting power; its line-up counts
   * @param lineUp another line-up on top, of the file; the usual one for none
   */
  public static Standing of(BleedSystem system, Setting setting, LineUp lineUp) {
    Standing standing = new Standing(new LinkedHashMap<>(), new LinkedHashMap<>());
    system.switches().forEach((name, all) -> standing.positions.put(name, all.get(0)));
    standing.take(system.lineUps().get(LineUp.USUAL));
    if (!setting.lineUp().isEmpty()) {
      standing.take(system.lineUps().get(setting.lineUp()));
    }
    if (!lineUp.name().equals(LineUp.USUAL)) {
      standing.take(lineUp);
    }
    return standing;
  }

  private void take(@Nullable LineUp lineUp) {
    if (lineUp == null) {
      return;
    }
    positions.putAll(lineUp.positions());
    lineUp.locks().forEach((part, lock) -> locks.put(part, lock.words()));
  }
}
