package dev.offtake.desk;

import dev.offtake.explain.CurveAnswer;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.quantity.Style;
import java.io.IOException;
import java.util.List;

/** Draws curves on a machine without a screen. */
final class Drawn {
  private Drawn() {}

  /**
   * The bytes of a picture.
   *
   * @param answers curves
   * @param scales whether it is an SVG, else a PNG
   * @throws QuantityProblem when this machine cannot draw letters
   */
  static byte[] of(List<CurveAnswer> answers, Style style, boolean scales)
      throws IOException, QuantityProblem {
    System.setProperty("java.awt.headless", "true");
    try {
      CurvePicture picture = new CurvePicture(answers, style);
      return scales ? PictureFile.svg(picture) : PictureFile.png(picture);
    } catch (LinkageError | InternalError e) {
      // A Java without screens comes without what it draws letters with.
      throw new QuantityProblem(
          "this machine has nothing to draw letters with",
          "install a font, fontconfig and freetype (Debian: fonts-dejavu-core fontconfig"
              + " libfreetype6)");
    }
  }
}
