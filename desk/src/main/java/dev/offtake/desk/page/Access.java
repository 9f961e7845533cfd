package dev.offtake.desk.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * Who may come in. On this machine alone everybody may; from elsewhere only who brings the key that
 * was printed, once: it is exchanged for a cookie, and another key is printed for the next device.
 */
final class Access {
  /** Name of the cookie. */
  static final String COOKIE = "offtake";

  private static final int BYTES = 18;

  private final SecureRandom random = new SecureRandom();
  private final boolean open;
  private final String token = fresh();
  private final String cookie = fresh();
  private String key = fresh();

  /**
   * Prepares.
   *
   * @param open whether nobody needs a key: the server is reached from this machine only
   */
  Access(boolean open) {
    this.open = open;
  }

  private String fresh() {
    byte[] bytes = new byte[BYTES];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Whether nobody needs a key. */
  boolean open() {
    return open;
  }

  /** The key that lets the next device in. */
  synchronized String key() {
    return key;
  }

  /** Takes a key; a right one is used up. */
  synchronized boolean enter(String given) {
    boolean right = same(given, key);
    if (right) {
      key = fresh();
    }
    return right;
  }

  /** What a device that was let in shows from then on. */
  String cookie() {
    return cookie;
  }

  /** Whether a device has been let in. */
  boolean known(String given) {
    return open || same(given, cookie);
  }

  /** What the page itself carries, and no other page knows. */
  String token() {
    return token;
  }

  /** Whether a request comes from the page itself. */
  boolean fromPage(String given) {
    return same(given, token);
  }

  /** In a time that does not tell how much of it is right. */
  private static boolean same(String one, String two) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), two.getBytes(StandardCharsets.UTF_8));
  }
}
