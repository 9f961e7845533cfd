package dev.offtake.cause.find;

import dev.offtake.cause.Recording;
import dev.offtake.part.Part;
import dev.offtake.solve.Setup;
import dev.offtake.time.Pace;

/** How what nobody knows exactly moves what is asked. */
interface Moved {
  /** Nothing is moved. */
  Moved NOTHING = setup -> setup;

  /** What is asked instead. */
  Setup setup(Setup asked);

  /** How a part moves instead, where time is played. */
  default Pace pace(Part part, Pace usual) {
    return usual;
  }

  /** By how much the clock of a recording is ahead of the profile's, s. */
  default double ahead(Recording recording) {
    return 0;
  }
}
