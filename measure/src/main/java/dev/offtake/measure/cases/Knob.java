package dev.offtake.measure.cases;

/** A number of a part that scatter or a failure may turn, SI; each part has those that it needs. */
enum Knob {
  /** Area that passes the same choked flow, wide open, m². */
  AREA(0),
  /** The same of the cooling side, m². */
  COLD_AREA(0),
  /** Area that stays when shut, m². */
  LEAK(0),
  /** Stands at this opening whatever moves it; NaN while it moves. */
  HELD(Double.NaN),
  /** Smallest opening. */
  FLOOR(0),
  /** Largest opening. */
  CEILING(1),
  /** 1 when it no longer hears a command to shut. */
  DEAF(0),
  /** Difference that begins to open a flapper, Pa. */
  CRACK(0),
  /** Further difference that opens it wide, Pa. */
  SPAN(1),
  /** 1 when fitted the wrong way round. */
  BACKWARDS(0),
  /** Pressure held, above the air outside, Pa; of a relief valve where it cracks. */
  SET(0),
  /** Band of pressure from shut to open, Pa. */
  DROOP(1),
  /** Half of the band in which friction leaves a regulator where it is, Pa. */
  STICTION(0),
  /** Share of the pressure that is felt or shown. */
  GAIN(1),
  /** Pressure added to what is felt or shown, Pa. */
  OFFSET(0),
  /** Felt instead of what there is, Pa absolute; NaN while the line is open. */
  TRAPPED(Double.NaN),
  /** Air that the set counts from, Pa absolute; NaN for the air outside. */
  VENT(Double.NaN),
  /** Pressure of the vent above the air outside, Pa. */
  VENT_ABOVE(0),
  /** 1 when it feels the other side. */
  CROSSED(0),
  /** 1 when its line ends one point further upstream. */
  WRONG_BOSS(0),
  /** Share of the muscle that arrives. */
  MUSCLE(1),
  /** Share of the stroke that can be made. */
  STROKE(1),
  /** Added to a temperature that is felt, K, or to a pressure that is watched, Pa. */
  DRIFT(0),
  /** 1 when it never acts. */
  DEAD(0),
  /** 1 when it acts without a cause. */
  FALSE(0),
  /** Hole to the outside before the part, m². */
  HOLE_UP(0),
  /** Hole to the outside behind the part, or of the part itself, m². */
  HOLE(0),
  /** Hole that opens with heat, m². */
  HOT_HOLE(0),
  /** Seat that lifts with heat, m². */
  HOT_LEAK(0),
  /** Flow of a user, kg/s. */
  TAKES(0),
  /** Pressure above which a user takes double, above the air outside, Pa; NaN for none. */
  DOUBLES(Double.NaN),
  /** Difference above which a core collapses, Pa; NaN for none. */
  COLLAPSES(Double.NaN),
  /** Share of the area that is left when it has collapsed. */
  COLLAPSED(1),
  /** Core speed below which it stands half open, share; NaN for none. */
  HANGS_BELOW(Double.NaN),
  /** Share of the conductance of heat that is left. */
  CLEAN(1),
  /** Factor on the pressure that a tap adds. */
  RISE(1),
  /** Share by which the tap's curve bends away between the points of its table. */
  BEND(0),
  /** Share lost below 85 % core speed. */
  HANDLING(0),
  /** Core speed less than shown, share. */
  SLOW(0),
  /** What a needle shows at most, above this it creeps, Pa; NaN for none. */
  KNEE(Double.NaN),
  /** Conductance of a zone to its surroundings and through its louvre, W/K. */
  LOSS(4),
  /** Told by a position switch whatever the valve does; NaN while it is right. */
  TOLD(Double.NaN);

  private final double usual;

  Knob(double usual) {
    this.usual = usual;
  }

  /** The value of a part for which nobody says another. */
  double usual() {
    return usual;
  }
}
