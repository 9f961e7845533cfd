package dev.offtake.network;

import dev.offtake.part.Branch;
import java.util.Arrays;

/**
 * One end of a stream at an inner point: where its terms go in the residual and in the Jacobian.
 *
 * @param branch the stream
 * @param point inner point
 * @param arrives whether the positive direction of the stream leads into the point
 * @param massSlots slot of the mass row for each of the stream's variables, or −1
 * @param energySlots slot of the energy row for each of the stream's variables, or −1
 * @param ownTemperature slot of the energy row for the point's own temperature
 * @param atBoundary whether the stream answers to something that is given from outside
 */
record Joint(
    Branch branch,
    int point,
    boolean arrives,
    int[] massSlots,
    int[] energySlots,
    int ownTemperature,
    boolean atBoundary) {

  /** Makes a joint; whether the stream answers to something from outside follows from its slots. */
  Joint(
      Branch branch,
      int point,
      boolean arrives,
      int[] massSlots,
      int[] energySlots,
      int ownTemperature) {
    this(
        branch,
        point,
        arrives,
        massSlots,
        energySlots,
        ownTemperature,
        Arrays.stream(massSlots).anyMatch(slot -> slot < 0));
  }

  double sign() {
    return arrives ? 1 : -1;
  }

  double enthalpy() {
    return arrives ? branch.hTo : branch.hFrom;
  }

  double[] enthalpyPartials() {
    return arrives ? branch.dHTo : branch.dHFrom;
  }
}
