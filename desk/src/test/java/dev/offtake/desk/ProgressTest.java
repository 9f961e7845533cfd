package dev.offtake.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Progress is for a person at a terminal. */
class ProgressTest {
  private static String said(boolean seen) {
    StringWriter err = new StringWriter();
    Progress progress = new Progress(new PrintWriter(err, true), 1, seen, 0);
    progress.accept(0.5);
    progress.accept(1);
    progress.end();
    return err.toString();
  }

  @Test
  void nothingGetsIntoAFile() {
    assertThat(said(false)).isEmpty();
  }

  @Test
  void aPersonSeesHowFarItIs() {
    assertThat(said(true)).contains("working, 50 %", "working, 100 %");
  }
}
