package dev.offtake.desk.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** How often each address asks: a bucket that fills at a steady rate and is emptied by requests. */
final class Rate {
  /** So many addresses are remembered. */
  private static final int ADDRESSES = 1000;

  private final double perSecond;
  private final double burst;
  private final LongSupplier clock;
  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > ADDRESSES;
        }
      };

  private record Bucket(double left, long at) {}

  /**
   * Prepares.
   *
   * @param perSecond requests a second
   * @param burst so many at once
   * @param clock ns
   */
  Rate(double perSecond, double burst, LongSupplier clock) {
    this.perSecond = perSecond;
    this.burst = burst;
    this.clock = clock;
  }

  /**
   * Counts a request; whether it may pass.
   *
   * @param address who asks
   * @param weight so many requests it counts for
   */
  synchronized boolean passes(String address, int weight) {
    long now = clock.getAsLong();
    Bucket last = buckets.getOrDefault(address, new Bucket(burst, now));
    double left = Math.min(burst, last.left() + (now - last.at()) * 1e-9 * perSecond);
    boolean passes = left >= weight;
    buckets.put(address, new Bucket(passes ? left - weight : left, now));
    return passes;
  }
}
