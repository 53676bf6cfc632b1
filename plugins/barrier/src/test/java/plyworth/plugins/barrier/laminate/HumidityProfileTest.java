package plyworth.plugins.barrier.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HumidityProfileTest {

  private static final int TRIALS = 400;

  private static Ply plain(double resistance) {
    return new Ply(resistance, HumidityCurve.ONE);
  }

  private static HumidityCurve swelling() {
    return HumidityCurve.of(new double[] {0, 0.5, 0.75, 0.9, 1}, new double[] {0.4, 1, 1.8, 4, 15});
  }

  /**
   * TAPPI 18IFP28, abstract: in a symmetrical laminate the middle layer sees the mean of the
   * humidity outside and inside whatever the skins are made of; only asymmetry shifts it.
   */
  @Test
  void theMiddleOfASymmetricalLaminateSeesTheMeanHumidity() {
    for (double skin : new double[] {0.01, 1, 300}) {
      HumidityProfile profile =
          HumidityProfile.of(List.of(plain(skin), plain(0.5), plain(skin)), 0.8, 0.2);
      assertThat((profile.faces()[1] + profile.faces()[2]) / 2).isCloseTo(0.5, within(1e-12));
    }
    HumidityProfile tightOutside =
        HumidityProfile.of(List.of(plain(9), plain(0.01), plain(1)), 0.8, 0.2);
    assertThat(tightOutside.faces()[1]).isCloseTo(0.26, within(0.001));
  }

  /** Analytic: pressure falls in proportion to resistance. */
  @Test
  void humidityFallsAsTheShareOfResistance() {
    HumidityProfile profile = HumidityProfile.of(List.of(plain(1), plain(2), plain(5)), 0.9, 0.1);
    assertThat(profile.faces()).containsExactly(new double[] {0.9, 0.8, 0.6, 0.1}, within(1e-12));
    assertThat(profile.resistance()).isCloseTo(8, within(1e-12));
  }

  /** Analytic, Kirchhoff: J·r = ∫ f dh; for f = e^(kh) over one layer a closed form. */
  @Test
  void oneSwellingLayerHasItsClosedForm() {
    double k = Math.log(10);
    HumidityCurve tenfold = HumidityCurve.of(new double[] {0, 1}, new double[] {1, 10});
    HumidityProfile profile = HumidityProfile.of(List.of(new Ply(2, tenfold)), 0.9, 0.3);
    double flux = (Math.exp(0.9 * k) - Math.exp(0.3 * k)) / k / 2;
    assertThat(profile.resistance()).isCloseTo(0.6 / flux, withPercentage(1e-10));
  }

  /** Thin slices, each at the humidity in its middle, by repeated substitution. */
  @Test
  void everFinerSlicesConvergeToTheProfile() {
    List<Ply> plies = List.of(plain(1), new Ply(3, swelling()), plain(0.5));
    double exact = HumidityProfile.of(plies, 0.95, 0.25).resistance();
    double coarse = Math.abs(sliced(plies, 5, 0.95, 0.25) - exact);
    double fine = Math.abs(sliced(plies, 50, 0.95, 0.25) - exact);
    assertThat(fine).isLessThan(coarse / 50);
    assertThat(sliced(plies, 2000, 0.95, 0.25)).isCloseTo(exact, withPercentage(1e-4));
  }

  private static double sliced(List<Ply> plies, int slices, double outside, double inside) {
    double[] resistances = new double[plies.size() * slices];
    for (int i = 0; i < resistances.length; i++) {
      resistances[i] = plies.get(i / slices).resistance() / slices;
    }
    double total = 0;
    for (int round = 0; round < 200; round++) {
      total = java.util.Arrays.stream(resistances).sum();
      double before = 0;
      for (int i = 0; i < resistances.length; i++) {
        double middle = outside - (outside - inside) * (before + resistances[i] / 2) / total;
        before += resistances[i];
        Ply ply = plies.get(i / slices);
        resistances[i] = ply.resistance() / slices / ply.water().value(middle);
      }
    }
    return total;
  }

  @Test
  void cuttingALayerInTwoChangesNothing() {
    List<Ply> whole = List.of(plain(1), new Ply(3, swelling()), plain(0.5));
    Ply part = new Ply(1.5, swelling());
    List<Ply> cut = List.of(plain(1), part, part, plain(0.5));
    assertThat(HumidityProfile.of(cut, 0.95, 0.25).resistance())
        .isCloseTo(HumidityProfile.of(whole, 0.95, 0.25).resistance(), withPercentage(1e-10));
  }

  @Test
  void withoutDifferenceEveryLayerStandsAtTheSameHumidity() {
    HumidityProfile profile =
        HumidityProfile.of(List.of(plain(1), new Ply(3, swelling())), 0.75, 0.75);
    assertThat(profile.faces()).containsExactly(0.75, 0.75, 0.75);
    assertThat(profile.resistance(1)).isCloseTo(3 / 1.8, withPercentage(1e-9));
  }

  @Test
  void behindATightLayerItIsAsInsideAndBeforeItAsOutside() {
    HumidityProfile profile =
        HumidityProfile.of(
            List.of(new Ply(2, swelling()), plain(Double.POSITIVE_INFINITY), plain(1)), 0.8, 0.1);
    assertThat(profile.faces()).containsExactly(new double[] {0.8, 0.8, 0.1, 0.1}, within(1e-9));
    assertThat(profile.resistance()).isInfinite();
  }

  @Test
  void whatIsUnknownOfOneLayerIsUnknownOfTheHumidityWithin() {
    HumidityProfile profile =
        HumidityProfile.of(List.of(plain(1), plain(Double.NaN), new Ply(1, swelling())), 0.8, 0.1);
    assertThat(profile.faces()[2]).isNaN();
    assertThat(profile.resistance()).isNaN();
  }

  @Test
  void aTurnedLaminateBetweenTurnedHumiditiesIsTheSame() {
    Random random = new Random(7);
    for (int i = 0; i < TRIALS; i++) {
      List<Ply> plies = laminate(random);
      List<Ply> turned = new ArrayList<>(plies);
      Collections.reverse(turned);
      double a = random.nextDouble();
      double b = random.nextDouble();
      assertThat(HumidityProfile.of(turned, b, a).resistance())
          .isCloseTo(HumidityProfile.of(plies, a, b).resistance(), withPercentage(1e-7));
    }
  }

  @Test
  void oneLayerMoreNeverLetsMoreWaterThrough() {
    Random random = new Random(8);
    for (int i = 0; i < TRIALS; i++) {
      List<Ply> plies = laminate(random);
      List<Ply> more = new ArrayList<>(plies);
      more.add(random.nextInt(plies.size() + 1), laminate(random).get(0));
      double a = random.nextDouble();
      double b = random.nextDouble();
      assertThat(HumidityProfile.of(more, a, b).resistance())
          .isGreaterThan(HumidityProfile.of(plies, a, b).resistance() * (1 - 1e-9));
    }
  }

  private static List<Ply> laminate(Random random) {
    List<Ply> plies = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(5); i++) {
      double resistance = Math.exp(6 * random.nextDouble() - 3);
      plies.add(random.nextBoolean() ? plain(resistance) : new Ply(resistance, swelling()));
    }
    return plies;
  }
}
