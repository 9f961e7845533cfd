package dev.offtake.measure.cases;

/** Power settings of the demo, typed from demo/demo-twin.yaml. */
enum Power {
  /** Ground idle. */
  GROUND_IDLE("ground idle", 0.62, 0.24, true),
  /** Descent. */
  DESCENT("descent", 0.82, 0.45, false),
  /** Take-off, run up on the ground. */
  TAKE_OFF("take-off", 0.99, 0.96, true),
  /** Cruise at 35,000 ft and Mach 0.78. */
  CRUISE("cruise", 0.92, 0.88, false);

  private static final double CRUISE_HEIGHT = 35_000 * Shop.FOOT;
  private static final double CRUISE_MACH = 0.78;

  private final String words;
  private final double core;
  private final double fan;
  private final boolean ground;

  Power(String words, double core, double fan, boolean ground) {
    this.words = words;
    this.core = core;
    this.fan = fan;
    this.ground = ground;
  }

  /** As the file calls it. */
  String words() {
    return words;
  }

  /** Core speed, physical, share. */
  double core() {
    return core;
  }

  /** Fan speed, physical, share. */
  double fan() {
    return fan;
  }

  /** Whether somebody can stand at a test port. */
  boolean ground() {
    return ground;
  }

  /** The day that the file ties to it. */
  Outside day() {
    return this == CRUISE ? Outside.at(CRUISE_HEIGHT, CRUISE_MACH) : Outside.STANDARD;
  }
}
