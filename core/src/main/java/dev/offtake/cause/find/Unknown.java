package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import dev.offtake.part.Conditions;
import dev.offtake.solve.Setup;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Something that nobody knows exactly, in a healthy system as in a broken one. */
sealed interface Unknown {
  /** Its standard deviation, SI. */
  double sigma();

  /** Whether it moves only what is read, and nothing that a state could be solved with. */
  default boolean readingOnly() {
    return false;
  }

  /**
   * A number of a part inside its band.
   *
   * @param number which
   * @param value in force
   * @param low end of what can be, SI
   * @param high end of what can be, SI
   * @param sigma root of the mean square distance from the value, everything between the ends of
   *     the band being alike
   */
  record OfPart(Setup.PartNumber number, double value, double low, double high, double sigma)
      implements Unknown {}

  /**
   * Constant error of a test gauge.
   *
   * @param name of the gauge
   * @param sender gauge of the system whose sender it shares; empty for none
   * @param sigma Pa or K
   */
  record TestGauge(String name, String sender, double sigma) implements Unknown {
    @Override
    public boolean readingOnly() {
      return true;
    }
  }

  /**
   * How far the temperature of a point has not settled yet, in what {@link Settling} tells.
   *
   * @param scene number of the scene
   * @param point number of the point
   * @param least how far it is uncertain whatever has failed, K, see {@link Settling#least}
   * @param sigma one
   */
  record Unsettled(int scene, int point, double least, double sigma) implements Unknown {
    @Override
    public boolean readingOnly() {
      return true;
    }
  }

  /**
   * How far the clock of a recorder is ahead of the profile's.
   *
   * @param recording which
   * @param sigma s
   */
  record Clock(Recording recording, double sigma) implements Unknown {}

  /**
   * What the model has wrong of a recorded course all along.
   *
   * @param recording which
   * @param about name of what was recorded
   * @param error the model error of a value, SI
   * @param sigma in model errors
   */
  record Channel(Recording recording, String about, DoubleUnaryOperator error, double sigma)
      implements Unknown {}

  /**
   * How fast a valve moves.
   *
   * @param part full name
   * @param line which number
   * @param value in force
   * @param sigma in steps of {@link PaceLine#away}
   */
  record OfPace(String part, PaceLine line, double value, double sigma) implements Unknown {}

  /** What the air or the engine differs by from what was said. */
  sealed interface Outside extends Unknown {
    /** Scenes in which it is felt. */
    List<Integer> scenes();

    /** Whether it is felt in a scene. */
    default boolean felt(int scene) {
      return scenes().contains(scene);
    }

    /** The conditions, some standard deviations away. */
    Conditions away(Conditions from, double sigmas);
  }

  /**
   * Core speed at which things were read.
   *
   * @param scenes that were read at this setting of the lever
   * @param sigma share of full speed
   * @param fan how much the fan's share moves with it
   */
  record Core(List<Integer> scenes, double sigma, double fan) implements Outside {
    @Override
    public Conditions away(Conditions from, double sigmas) {
      double by = sigmas * sigma;
      return from.withSpeeds(from.core() + by, Math.max(0.01, from.fan() + fan * by));
    }
  }

  /**
   * Pressure of the air outside.
   *
   * @param scenes with the same air
   * @param sigma Pa
   */
  record Barometer(List<Integer> scenes, double sigma) implements Outside {
    @Override
    public Conditions away(Conditions from, double sigmas) {
      double by = sigmas * sigma;
      double ram = from.inletP() / from.ambientP();
      return new Conditions(
          from.ambientP() + by,
          from.ambientT(),
          from.inletP() + ram * by,
          from.inletT(),
          from.core(),
          from.fan(),
          from.corrected());
    }
  }

  /**
   * Temperature of the air outside.
   *
   * @param scenes with the same air
   * @param sigma K
   */
  record Air(List<Integer> scenes, double sigma) implements Outside {
    @Override
    public Conditions away(Conditions from, double sigmas) {
      double by = sigmas * sigma;
      double ram = from.inletT() / from.ambientT();
      return new Conditions(
          from.ambientP(),
          from.ambientT() + by,
          from.inletP(),
          from.inletT() + ram * by,
          from.core(),
          from.fan(),
          from.corrected());
    }
  }
}
