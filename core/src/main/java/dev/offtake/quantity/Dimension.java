package dev.offtake.quantity;

/** What a number measures. Values are kept in the SI unit named with each. */
public enum Dimension {
  /** Pressure above the air outside, Pa. */
  GAUGE_PRESSURE("gauge pressure"),
  /** Pressure above vacuum, Pa. */
  ABSOLUTE_PRESSURE("absolute pressure"),
  /** A gauge or an absolute pressure, whichever the file gives; the value itself knows which. */
  PRESSURE("gauge or absolute pressure"),
  /** Difference of two pressures, Pa. */
  PRESSURE_DIFFERENCE("pressure difference"),
  /** Temperature, K. */
  TEMPERATURE("temperature"),
  /** Difference of two temperatures, K. */
  TEMPERATURE_DIFFERENCE("temperature difference"),
  /** Mass flow, kg/s. */
  MASS_FLOW("mass flow"),
  /** Length, m. */
  LENGTH("length"),
  /** Area, m². */
  AREA("area"),
  /** Volume, m³. */
  VOLUME("volume"),
  /** Share of a whole, a fraction; also core and fan speed as a share of 100 %. */
  SHARE("share"),
  /** Speed of rotation, 1/s (rpm over 60). */
  SPEED("speed of rotation"),
  /** Time, s. */
  TIME("time"),
  /** Thermal conductance, W/K. */
  CONDUCTANCE("thermal conductance"),
  /** Flow coefficient Kv, m³/h of water at 1 bar (Cv is converted). */
  VALVE_CAPACITY("valve flow coefficient"),
  /** Sonic conductance of ISO 6358, m³/(s Pa). */
  SONIC_CONDUCTANCE("sonic conductance"),
  /** Torque, N m. */
  TORQUE("torque"),
  /** Moment of inertia, kg m². */
  INERTIA("moment of inertia"),
  /** Plane angle, rad. */
  ANGLE("angle"),
  /** A bare number. */
  NUMBER("number");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /** How the dimension is called in a message. */
  public String words() {
    return words;
  }
}
