package dev.offtake.cause.find;

import dev.offtake.part.Access;
import dev.offtake.study.Fault;
import java.util.Set;

/** Something that can be done to know more. */
public sealed interface Check {
  /** What it takes to get there; paid once for everything that needs the same. */
  Set<Access> access();

  /** Minutes of the thing itself, without getting there. */
  double minutes();

  /**
   * A run with something read.
   *
   * @param scene power and line-up
   * @param instrument what is read
   * @param again whether something was read at this power already, so that the engine need not be
   *     brought there and left to settle
   */
  record Run(Scene scene, Instrument instrument, boolean again) implements Check {
    /** Minutes of another power: to set it and to let it settle (common practice, no source). */
    private static final double SETTLE = 10;

    @Override
    public Set<Access> access() {
      return instrument.access() == Access.TEST_PORT
          ? Set.of(Access.ENGINE_RUN, Access.TEST_PORT)
          : Set.of(Access.ENGINE_RUN);
    }

    @Override
    public double minutes() {
      return Instrument.MINUTES + (again ? 0 : SETTLE);
    }
  }

  /**
   * A part looked at, on the engine or on the bench.
   *
   * @param fault what is looked for
   */
  record Look(Fault fault) implements Check {
    @Override
    public Set<Access> access() {
      Access own = fault.mode().inspection().access();
      return own == Access.FLIGHT_DECK ? Set.of() : Set.of(own);
    }

    @Override
    public double minutes() {
      return fault.mode().inspection().minutes();
    }
  }
}
