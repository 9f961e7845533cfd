package dev.offtake.desk.page;

/**
 * What one page may ask of the machine.
 *
 * @param body largest body, bytes
 * @param perSecond requests a second from one address; ten times as many from this machine
 * @param burst so many at once from one address; likewise
 * @param waiting slow questions that may wait for their turn; far fewer than the server has
 *     threads, so that it goes on answering others
 * @param seconds longest time that a slow question may take, s
 */
public record Limits(int body, double perSecond, int burst, int waiting, int seconds) {
  /** For one person and a shop. */
  public static final Limits USUAL = new Limits(256 * 1024, 400, 800, 10, 60);

  /** The same without a limit on how often is asked, to find how fast the server is. */
  public static final Limits UNHURRIED = new Limits(256 * 1024, 1e9, Integer.MAX_VALUE, 10, 60);
}
