package dev.offtake.time;

import static org.assertj.core.api.Assertions.assertThat;

import dev.offtake.explain.Question;
import dev.offtake.network.Demos;
import dev.offtake.quantity.QuantityProblem;
import dev.offtake.solve.Setup;
import dev.offtake.solve.Solution;
import dev.offtake.study.Broken;
import dev.offtake.study.Fault;
import dev.offtake.study.Faults;
import dev.offtake.system.BleedSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Random drives with random faults: none hangs, each is played to its end or says why not. The
 * number of them is 200, or what the system property {@code offtake.drives} says.
 */
class RandomDrivesTest {
  private static final BleedSystem TWIN = Demos.demo("twin");
  private static final List<Fault> FAULTS = Faults.all(TWIN);
  private static final int DRIVES = Integer.getInteger("offtake.drives", 200);
  private static final int MOST_STEPS = 20_000;

  private final Random random = new Random(20240501);

  @Test
  void endsOrSaysWhy() throws QuantityProblem {
    int played = 0;
    int done = 0;
    List<String> reasons = new ArrayList<>();
    for (int i = 0; i < DRIVES; i++) {
      Broken broken = broken();
      Drive drive = drive(broken);
      Played one = new Transient(broken.network()).run(drive, Settings.usual(), s -> true);
      boolean ended = one.end() == Played.End.DONE;
      assertThat(ended || !one.resists().isBlank()).as("drive " + i).isTrue();
      assertThat(one.cost().steps()).as("drive " + i).isLessThan(MOST_STEPS);
      if (!ended) {
        reasons.add(one.end() + " at " + one.seconds() + ": " + one.resists());
      }
      played += one.end() == Played.End.NO_START ? 0 : 1;
      done += ended ? 1 : 0;
      if (ended) {
        assertSound(one, drive);
      }
    }
    assertThat(done).as("of " + played + ": " + reasons).isGreaterThan(played * 98 / 100);
    assertThat(played).isGreaterThan(DRIVES * 9 / 10);
  }

  private Broken broken() {
    while (true) {
      List<Fault> faults = new ArrayList<>();
      for (int k = random.nextInt(3); k > 0; k--) {
        faults.add(FAULTS.get(random.nextInt(FAULTS.size())));
      }
      try {
        return Broken.of(TWIN.network(), TWIN.sides(), faults);
      } catch (Broken.Contradiction twice) {
        // Two faults of one thing: draw others.
      }
    }
  }

  private Drive drive(Broken broken) throws QuantityProblem {
    List<String> switches = switches();
    Setup first = asked(broken, switches);
    Drive drive = Drive.from(random.nextBoolean() ? first : first.healthy());
    for (int k = 3 + random.nextInt(4); k > 0; k--) {
      switches = random.nextInt(3) == 0 ? switches() : switches;
      Setup next = asked(broken, switches);
      drive =
          random.nextBoolean()
              ? drive.jump(next).hold(20 * random.nextDouble())
              : drive.ramp(0.5 + 10 * random.nextDouble(), next);
    }
    return drive;
  }

  private Setup asked(Broken broken, List<String> switches) throws QuantityProblem {
    String core = String.format(Locale.ROOT, "%.2f %%", 58 + 47 * random.nextDouble());
    return broken.setup(Question.of(TWIN, core, "", "", switches).setup());
  }

  private List<String> switches() {
    List<String> set = new ArrayList<>();
    for (Map.Entry<String, List<String>> each : TWIN.switches().entrySet()) {
      if (random.nextInt(4) == 0) {
        List<String> positions = each.getValue();
        set.add(each.getKey() + ": " + positions.get(random.nextInt(positions.size())));
      }
    }
    return set;
  }

  private static void assertSound(Played played, Drive drive) {
    assertThat(played.seconds()).isEqualTo(drive.seconds());
    Solution end = played.at(played.seconds());
    for (int i = 0; i < end.network().points().size(); i++) {
      assertThat(end.pressure(i)).isBetween(1e4, 5e6);
      assertThat(end.temperature(i)).isBetween(200.0, 2000.0);
    }
  }
}
