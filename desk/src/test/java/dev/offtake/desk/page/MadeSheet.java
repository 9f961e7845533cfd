package dev.offtake.desk.page;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.offtake.part.Kinds;
import dev.offtake.quantity.Style;
import dev.offtake.system.SystemReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.DoubleConsumer;

/** The pocket sheet of a small system, a starter of one engine, made once for all tests. */
final class MadeSheet {
  private static final String STARTER = "/dev/offtake/desk/starters/turboshaft.yaml";

  static final Opened SMALL = small();

  // No lambda of this class: several threads work for it while it is being set up.
  static final ObjectNode RECORD = Pocket.of(SMALL, Style.SHOP, new Unheard());

  static final byte[] HTML = PocketPage.of(SMALL.system().title(), RECORD);

  private MadeSheet() {}

  /** Takes progress that nobody looks at. */
  private static final class Unheard implements DoubleConsumer {
    @Override
    public void accept(double share) {}
  }

  private static Opened small() {
    try (InputStream in = MadeSheet.class.getResourceAsStream(STARTER)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      var system = SystemReader.readText("turboshaft.yaml", text, Kinds.all()).system();
      return new Opened(system.orElseThrow(), "turboshaft.yaml", new JarShelf(List.of()));
    } catch (IOException missing) {
      throw new IllegalStateException(missing);
    }
  }
}
