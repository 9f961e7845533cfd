package dev.offtake.part;

/**
 * Ways of looking for a failure that several kinds share; all of them common practice, no source.
 */
final class Looks {
  static final Inspection SOAP =
      new Inspection(
          "Pressurise the duct low and cold and go over it with leak fluid: it bubbles",
          Access.COWLS,
          20,
          "shop air, leak fluid");

  static final Inspection CLAMP =
      new Inspection(
          "Shake the joint and check the torque of its clamp: it moves, or soot shows at its edge",
          Access.COWLS,
          10,
          "torque wrench");

  static final Inspection HOT_RUN =
      new Inspection(
          "Look for a fresh streak of soot or scorched paint at the joint after a hot run: cold it"
              + " is tight",
          Access.COWLS,
          15,
          "light");

  static final Inspection BORESCOPE =
      new Inspection(
          "Look inside through the nearest port: something is in the way",
          Access.COWLS,
          20,
          "borescope, light");

  static final Inspection MEASURE =
      new Inspection(
          "Take it out and measure its hole against the parts list",
          Access.REMOVED,
          10,
          "pin gauges, light");

  static final Inspection CONTINUITY =
      new Inspection(
          "Measure continuity and insulation at its connector: not as its manual says",
          Access.COWLS,
          15,
          "multimeter");

  static final Inspection SWITCH_AND_WATCH =
      Inspection.look(
          "Move its switch and watch the duct pressure: it does not answer", Access.ENGINE_RUN, 5);

  static final Inspection TEST_GAUGE =
      new Inspection(
          "Fit a test gauge in calibration at the same place and compare",
          Access.TEST_PORT,
          10,
          "test gauge in calibration");

  private Looks() {}
}
