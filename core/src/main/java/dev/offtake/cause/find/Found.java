package dev.offtake.cause.find;

import dev.offtake.cause.Reading;
import dev.offtake.cause.Readings;
import dev.offtake.system.BleedSystem;
import java.util.List;
import java.util.Optional;

/**
 * What a search found.
 *
 * @param system what was looked at
 * @param readings what was read
 * @param prior what was believed before
 * @param scenes powers and line-ups at which something was read
 * @param looks what was compared, with what a sound system foretells
 * @param ranked causes, the likeliest first
 * @param groups causes that these readings cannot part
 * @param units chances summed by removable unit, the likeliest first
 * @param nothing chance that nothing is wrong
 * @param none chance that something is wrong which is not on the list
 * @param fit chance that sound readings lie as far from the best explanation as these do
 * @param considered how many causes were weighed
 * @param unsolved how many causes have no answer in a scene that was read
 * @param pairs whether two failures at once were considered
 * @param advice what to do next
 */
public record Found(
    BleedSystem system,
    Readings readings,
    Prior prior,
    List<Scene> scenes,
    List<Look> looks,
    List<Ranked> ranked,
    List<Group> groups,
    List<UnitChance> units,
    double nothing,
    double none,
    double fit,
    int considered,
    int unsolved,
    boolean pairs,
    Advice advice) {

  /**
   * Largest effective area of joints that nobody lists behind each regulator, m² (0.04 in²): an
   * assumption. Half of it is what counts.
   */
  public static final double SEEP = 0.04 * 0.0254 * 0.0254;

  /** Worse than which the best explanation does not explain the readings. */
  private static final double EXPLAINS = 0.01;

  /** Keeps its lists. */
  public Found {
    scenes = List.copyOf(scenes);
    looks = List.copyOf(looks);
    ranked = List.copyOf(ranked);
    groups = List.copyOf(groups);
    units = List.copyOf(units);
  }

  /**
   * One thing that was compared.
   *
   * @param scene number of the scene
   * @param reading as it was made; empty for what the occasion itself says, such as a trip
   * @param sound what a sound system foretells, SI; 0 or 1 for what is or is not
   * @param odd chance that it is a slip or that its gauge lies, whatever the cause
   */
  public record Look(int scene, Optional<Reading> reading, double sound, double odd) {}

  /**
   * Causes that the readings cannot part.
   *
   * @param members numbers in the ranking, the likeliest first
   * @param chance of all of them
   * @param asSound whether they look like a sound system in these readings
   */
  public record Group(List<Integer> members, double chance, boolean asSound) {
    /** Keeps its list. */
    public Group {
      members = List.copyOf(members);
    }
  }

  /**
   * A removable unit.
   *
   * @param part full name of the part
   * @param unit which of its units
   * @param chance that it has failed
   */
  public record UnitChance(String part, String unit, double chance) {}

  Found advised(Advice other) {
    return new Found(
        system,
        readings,
        prior,
        scenes,
        looks,
        ranked,
        groups,
        units,
        nothing,
        none,
        fit,
        considered,
        unsolved,
        pairs,
        other);
  }

  /** Whether something that was compared comes from a recording. */
  public boolean recorded(Look look) {
    return scenes.get(look.scene()).instant().isPresent();
  }

  /** Whether something on the list explains the readings. */
  public boolean explained() {
    return fit >= EXPLAINS;
  }
}
