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
  /** A valve with this share or more is called the driver: air alone does not swing. */
  private static final double DRIVES = 0.2;

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

  /** Who drives it: the valve with the largest share when that is a fifth or more. */
  public Share driver() {
    for (Share share : shares) {
      if (share.valve() && share.share() >= DRIVES) {
        return share;
      }
    }
    return shares.get(0);
  }
}
