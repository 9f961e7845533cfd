package dev.offtake.explain;

import dev.offtake.quantity.Style;
import java.util.List;

/** Prints how trapped air leaves. */
final class BleedText {
  private static final int FIRST = 16;

  private BleedText() {}

  static void write(PlayAnswer.Bleeding bleed, Sheet sheet, Style style) {
    List<String> heads = BleedWords.heads(bleed, style);
    int second = Math.max(FIRST, heads.get(1).length() + 2);
    int end = sheet.width();
    String head = pad(heads.get(0), FIRST) + pad(heads.get(1), second);
    sheet.right("BLEED-DOWN", 2, head, end);
    for (PlayAnswer.Worst worst : bleed.worst()) {
      List<String> cells = BleedWords.cells(worst, style);
      String right = pad(cells.get(0), FIRST) + pad(cells.get(1), second);
      sheet.right("  " + worst.pocket(), 4, right, end);
      if (!worst.cause().isEmpty()) {
        String sound = "healthy " + Durations.of(worst.healthy());
        sheet.line("with " + worst.cause() + "; " + sound, 6, 8);
      }
    }
    if (!bleed.causes().isEmpty()) {
      String causes =
          String.join("; ", bleed.causes().stream().map(PlayAnswer.Caused::words).toList());
      sheet.line("Looked at besides, each for itself: " + causes + ".", 2, 2);
    }
    sheet.line(BleedWords.blind(bleed.healthy()), 2, 2);
    if (!bleed.proof().isEmpty()) {
      sheet.line("PROVE IT WITH A GAUGE", 0, 0);
      bleed.proof().forEach(says -> sheet.line(says, 2, 4));
    }
    if (!bleed.open().isEmpty()) {
      sheet.line("WHAT TO OPEN for the slowest once the engine stands (time from fuel off)", 0, 0);
      bleed.open().forEach(says -> sheet.line(says, 2, 4));
    }
    sheet.blank();
  }

  private static String pad(String text, int columns) {
    return " ".repeat(Math.max(1, columns - text.length())) + text;
  }
}
