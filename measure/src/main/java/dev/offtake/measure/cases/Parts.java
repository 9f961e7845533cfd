package dev.offtake.measure.cases;

/** Names of the demo's parts, without their side, as demo/demo-twin.yaml writes them. */
final class Parts {
  static final String MID_TAP = "mid tap";
  static final String HIGH_TAP = "high tap";
  static final String FAN_TAP = "fan tap";
  static final String CHECK = "mid check valve";
  static final String HIGH_STAGE = "high stage valve";
  static final String REGULATOR = "bleed regulator";
  static final String THERMOSTAT = "regulator thermostat";
  static final String PRECOOLER = "precooler";
  static final String COOLING = "cooling air valve";
  static final String RELIEF = "relief valve";
  static final String PACK = "pack";
  static final String WING_HEAT = "wing heat";
  static final String COWL_HEAT = "cowl heat";
  static final String STARTER = "starter";
  static final String INTERSTAGE_PLUG = "interstage test port";
  static final String DUCT_PLUG = "duct test port";
  static final String PYLON_JOINT = "pylon joint";
  static final String WING_JOINT = "wing joint";
  static final String PYLON_LOOP = "pylon loop";
  static final String WING_LOOP = "wing loop";
  static final String OVERHEAT = "overheat trip";
  static final String OVERPRESSURE = "overpressure trip";
  static final String TRIP_LIGHT = "bleed trip light";
  static final String LEAK_LIGHT = "leak light";
  static final String PORT_GAUGE = "interstage port";

  /** Between the sides; no side in front. */
  static final String ISOLATION = "isolation valve";

  static final String AUXILIARY = "auxiliary unit";
  static final String GROUND = "ground supply";
  static final String TANK = "tank pressurisation";
  static final String DUCT_GAUGE = "duct gauge";
  static final String THERMOMETER = "temperature gauge";

  /** Not in the file: an unlisted line from one side's interstage to the other's. */
  static final String INTERSTAGE_LINE = "unlisted interstage line";

  /** Not in the file: an unlisted line from one side's duct to the other's. */
  static final String DUCT_LINE = "unlisted duct line";

  /** Not in the file: the engine as a whole. */
  static final String ENGINE = "engine";

  private Parts() {}

  /** The sender and needle of one side. */
  static String needle(Side side) {
    return DUCT_GAUGE + " " + side.mark();
  }

  /** The sensor and needle of one side. */
  static String thermometer(Side side) {
    return THERMOMETER + " " + side.mark();
  }
}
