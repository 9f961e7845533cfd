package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;

/** The shades of {@link Shading} stay inside their boxes and are told apart without colour. */
class ShadingTest {
  private static final int SIDE = 100;
  private static final Rectangle BOX = new Rectangle(23, 31, 40, 50);

  private static BufferedImage drawn(String verdict) {
    BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, SIDE, SIDE);
    Shading.fill(g, verdict, BOX);
    g.dispose();
    return image;
  }

  /** Share of dots that are not white in the box, or outside it and the dot around it. */
  private static double inked(BufferedImage image, boolean inside) {
    Rectangle around = new Rectangle(BOX);
    around.grow(1, 1);
    int all = 0;
    int inked = 0;
    for (int x = 0; x < SIDE; x++) {
      for (int y = 0; y < SIDE; y++) {
        if (inside ? BOX.contains(x, y) : !around.contains(x, y)) {
          all++;
          inked += (image.getRGB(x, y) & 0xFFFFFF) == 0xFFFFFF ? 0 : 1;
        }
      }
    }
    return (double) inked / all;
  }

  @Test
  void plainIsFullLostIsAslantHiddenIsWhite() {
    assertThat(inked(drawn("plain"), true)).isEqualTo(1);
    assertThat(inked(drawn("lost in the gauge"), true)).isBetween(0.1, 0.5);
    assertThat(inked(drawn("HIDDEN"), true)).isZero();
  }

  @Test
  void nothingLeavesItsBox() {
    assertThat(inked(drawn("plain"), false)).isZero();
    assertThat(inked(drawn("lost in the gauge"), false)).isZero();
  }
}
