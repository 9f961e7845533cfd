package dev.offtake.stability;

import java.util.List;

/**
 * One way in which a small upset fades or grows: e^(σt), or e^(σt) cos ωt.
 *
 * @param growth σ, 1/s; negative when it fades
 * @param circular ω, rad/s; 0 when it does not swing
 * @param shares who takes part, the largest first; shares add up to 1 over all
 */
public record Mode(double growth, double circular, List<Share> shares) {
  /** Valves with this share or more are called the drivers: air alone does not swing. */
  private static final double DRIVES = 0.2;

  /** Part of the largest share from which another driver is named as well. */
  private static final double AS_MUCH = 0.5;

  /** Keeps its list. */
  public Mode {
    shares = List.copyOf(shares);
  }

  /**
   * Who takes part in a mode.
   *
   * @param name valve or point
   * @param valve whether it is a valve
   * @param share participation, 0..1
   */
  public record Share(String name, boolean valve, double share) {}

  /** Swings a second, Hz. */
  public double frequency() {
    return circular / (2 * Math.PI);
  }

  /** Damping ratio −σ/√(σ² + ω²): 1 does not swing, 0 swings for ever, below 0 grows. */
  public double damping() {
    return -growth / Math.hypot(growth, circular);
  }

  /** Seconds in which it falls, or grows, by the factor e. */
  public double timeConstant() {
    return 1 / Math.abs(growth);
  }

  /**
   * Who drives it: where valves have a fifth or more of it, those that have about as much as the
   * first of them (two sides of an aircraft share their modes); else the place with most.
   */
  public List<Share> drivers() {
    double valves = 0;
    double most = 0;
    for (Share share : shares) {
      valves += share.valve() ? share.share() : 0;
      most = share.valve() ? Math.max(most, share.share()) : most;
    }
    if (valves < DRIVES) {
      return List.of(shares.get(0));
    }
    double least = AS_MUCH * most;
    return shares.stream().filter(share -> share.valve() && share.share() >= least).toList();
  }

  /** Names of the drivers in the order of the alphabet: {@code left and right bleed regulator}. */
  public String driver() {
    List<String> names = drivers().stream().map(Share::name).sorted().toList();
    String last = names.get(names.size() - 1);
    int blank = last.indexOf(' ');
    String tail = blank < 0 ? last : last.substring(blank);
    boolean twins = names.size() == 2 && names.get(0).endsWith(tail);
    return twins
        ? names.get(0).substring(0, names.get(0).length() - tail.length()) + " and " + last
        : String.join(" and ", names);
  }

  /** Whether a valve drives it. */
  public boolean byValve() {
    return drivers().get(0).valve();
  }
}
