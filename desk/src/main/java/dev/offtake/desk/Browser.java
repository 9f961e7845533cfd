package dev.offtake.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Opens an address in the person's browser, where there is a screen; else does nothing. */
final class Browser {
  private Browser() {}

  /** Opens an address; who has no browser has been told the address already. */
  static void open(String address) {
    List<String> command = command(System.getProperty("os.name", ""), System.getenv());
    if (command.isEmpty()) {
      return;
    }
    List<String> whole = new ArrayList<>(command);
    whole.add(address);
    try {
      new ProcessBuilder(whole)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      // The address stands on the screen.
    }
  }

  /**
   * The command that opens an address.
   *
   * @param system name of the operating system
   * @param environment variables of the person
   * @return empty where there is no screen
   */
  static List<String> command(String system, Map<String, String> environment) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler");
    }
    if (name.startsWith("mac")) {
      return List.of("open");
    }
    boolean screen =
        !environment.getOrDefault("DISPLAY", "").isEmpty()
            || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    return screen ? List.of("xdg-open") : List.of();
  }
}
