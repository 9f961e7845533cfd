package dev.offtake.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.offtake.flow.FrictionFactor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Darcy friction factors; rows recomputed independently from the published formulas. */
class FrictionFactorCheckTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          4e+03, 0, 0.03990701, 0.04042285, 0.04058973, 0.04055149
          4e+03, 1e-05, 0.03991717, 0.04042771, 0.04060133, 0.04056315
          4e+03, 0.0001, 0.04000843, 0.04048536, 0.04070552, 0.04066784
          4e+03, 0.001, 0.04091039, 0.04121615, 0.04172803, 0.04169544
          4e+03, 0.01, 0.04908227, 0.04923577, 0.05057835, 0.05061449
          4e+03, 0.05, 0.07698683, 0.07763488, 0.07652490, 0.07938270
          1e+04, 0, 0.03088295, 0.03088620, 0.03100213, 0.03097210
          1e+04, 1e-05, 0.03089842, 0.03089431, 0.03101981, 0.03098984
          1e+04, 0.0001, 0.03103721, 0.03099034, 0.03117816, 0.03114870
          1e+04, 0.001, 0.03238181, 0.03217489, 0.03269020, 0.03266535
          1e+04, 0.01, 0.04312658, 0.04304490, 0.04404362, 0.04404179
          1e+04, 0.05, 0.07380128, 0.07411855, 0.07500943, 0.07504422
          1e+05, 0, 0.01798977, 0.01782494, 0.01787482, 0.01786258
          1e+05, 1e-05, 0.01804380, 0.01786039, 0.01793605, 0.01792403
          1e+05, 0.0001, 0.01851387, 0.01826505, 0.01846262, 0.01845245
          1e+05, 0.001, 0.02217454, 0.02196621, 0.02234324, 0.02234241
          1e+05, 0.01, 0.03850354, 0.03853851, 0.03873356, 0.03875093
          1e+05, 0.05, 0.07178093, 0.07193966, 0.07194977, 0.07199636
          1e+06, 0, 0.01164504, 0.01158676, 0.01161241, 0.01160648
          1e+06, 1e-05, 0.01186954, 0.01176686, 0.01185816, 0.01185316
          1e+06, 0.0001, 0.01344144, 0.01332616, 0.01350820, 0.01350770
          1e+06, 0.001, 0.01994347, 0.01994120, 0.02002196, 0.02002924
          1e+06, 0.01, 0.03796474, 0.03803618, 0.03799150, 0.03801188
          1e+06, 0.05, 0.07157375, 0.07171859, 0.07155875, 0.07160688
          1e+07, 0, 0.00810267, 0.00813076, 0.00814556, 0.00814235
          1e+07, 1e-05, 0.00899571, 0.00895798, 0.00905889, 0.00905855
          1e+07, 0.0001, 0.01216608, 0.01216595, 0.01220974, 0.01221356
          1e+07, 0.001, 0.01966705, 0.01970193, 0.01967746, 0.01968617
          1e+07, 0.01, 0.03790983, 0.03798529, 0.03789659, 0.03791735
          1e+07, 0.05, 0.07155298, 0.07169645, 0.07150942, 0.07155775
          """)
  void correlations(
      double re, double e, double colebrook, double haaland, double churchill, double swamee) {
    same(FrictionFactor.colebrook(re, e), colebrook);
    same(FrictionFactor.haaland(re, e), haaland);
    same(FrictionFactor.churchill(re, e), churchill);
    same(FrictionFactor.swameeJain(re, e), swamee);
    if (re >= 1e5) {
      assertThat(churchill).isCloseTo(colebrook, within(0.015 * colebrook));
    }
  }

  /** Source: CalebBell/fluids tests/test_friction.py, Re 1e5, e 1e-4; to all printed digits. */
  @Test
  void publishedDigits() {
    assertThat(FrictionFactor.colebrook(1e5, 1e-4))
        .isCloseTo(0.018513866077471648, within(2e-12));
    assertThat(FrictionFactor.haaland(1e5, 1e-4)).isCloseTo(0.018265053014793857, within(2e-14));
    assertThat(FrictionFactor.churchill(1e5, 1e-4)).isCloseTo(0.018462624566280075, within(2e-14));
  }

  /** Laminar 64/Re, transition and Blasius' 0.3164·Re^−0.25; recomputed. */
  @Test
  void laminarAndTransition() {
    assertThat(FrictionFactor.churchill(1000, 1e-3)).isCloseTo(0.064, within(0.5e-9));
    assertThat(FrictionFactor.churchill(2000, 1e-3)).isCloseTo(0.0320433, within(0.5e-7));
    assertThat(FrictionFactor.churchill(3000, 1e-3)).isCloseTo(0.0436915, within(0.5e-7));
    assertThat(FrictionFactor.churchill(1e4, 0)).isCloseTo(0.03164, within(0.021 * 0.03164));
  }

  private static void same(double computed, double printed) {
    assertThat(computed).isCloseTo(printed, within(0.5001e-8));
  }
}
