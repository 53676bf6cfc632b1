package plyworth.plugins.barrier.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.course.Balance;
import plyworth.plugins.barrier.course.Courses;
import plyworth.plugins.barrier.permeation.Arrhenius;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

class AcceleratedStorageTest {

  private static final Material FILM =
      Bench.material(
          "film", "wv-rate", 0.80, "wv-activation", 33.5, "o2-rate", 5, "o2-activation", 40);

  private static AcceleratedStorage of(ScoringContext context) {
    return AcceleratedStorage.of(
        BarrierModel.of(context), LayerNotation.readStructure("film 20 um"));
  }

  private static ScoringContext context(
      MoistureLimit moisture, OxygenLimit oxygen, double celsius, double humidity) {
    Brief brief =
        Bench.brief(
            Bench.product(20, moisture, oxygen, null),
            Bench.sachet(60, 120, 10),
            celsius,
            humidity,
            365);
    return Bench.context(brief, FILM);
  }

  private static String refusal(ScoringContext context) {
    return of(context).refusal().orElseThrow().key();
  }

  /** Analytic, by the logarithmic form at 25 °C 60 % RH and at 40 °C 75 % RH. */
  @Test
  void chamberBringsTheProductAsFarAsStorageDoes() {
    AcceleratedStorage storage = of(context(Courses.DRY_FOOD, null, 25, 60));
    double rate = 1 / (0.9 * SaturatedVapour.pascal(38)) * 0.80 * 0.0144 / (20 * 0.10);
    double there = rate * Arrhenius.factor(33.5, 38, 25) * SaturatedVapour.pascal(25);
    double here = rate * Arrhenius.factor(33.5, 38, 40) * SaturatedVapour.pascal(40);
    for (AcceleratedStorage.Pull pull : storage.pulls()) {
      double activity = 0.60 - 0.40 * Math.exp(-there * pull.storageDay());
      double days = Math.log(0.55 / (0.75 - activity)) / here;
      assertThat(pull.chamberDay()).isCloseTo(days, withPercentage(0.1));
    }
    assertThat(storage.pulls().get(3).storageDay()).isEqualTo(365);
  }

  @Test
  void aPackThatFailsEarlyIsFollowedToItsLimit() {
    MoistureLimit touchy = new MoistureLimit(new Isotherm.Linear(0.10), 2, 0.2, 0.5);
    AcceleratedStorage storage = of(context(touchy, null, 25, 60));
    assertThat(storage.pulls().get(3).storageDay()).isLessThan(100);
    assertThat(storage.pulls().get(3).times()).isGreaterThan(1);
  }

  @Test
  void crystalsThatOnlyTheChamberDissolvesShowNothing() {
    MoistureLimit salt = new MoistureLimit(new Isotherm.Deliquescent(0.70, 0.01), 20, 0.4, 0.7);
    assertThat(refusal(context(salt, new OxygenLimit(100, 0), 25, 60)))
        .isEqualTo("refusal.dissolves");
  }

  @Test
  void aChamberThatChangesWhatEndsTheShelfLifeIsRefused() {
    ScoringContext mild = context(Courses.DRY_FOOD, new OxygenLimit(500, 0), 25, 60);
    String storage = Bench.barrier(mild, "film 20 um").limiting().orElseThrow().mechanism().word();
    assertThat(storage).isEqualTo("oxygen");
    assertThat(refusal(mild)).isEqualTo("refusal.other-mechanism");
  }

  @Test
  void aChamberThatDrivesNothingOrLessIsRefused() {
    ScoringContext context = context(Courses.DRY_FOOD, null, 25, 60);
    assertThat(refusal(context.with("chamber-humidity", 30))).isEqualTo("refusal.no-drive");
    assertThat(refusal(context.with("chamber-temperature", 5))).isEqualTo("refusal.slower");
    assertThat(refusal(context(Courses.DRY_FOOD, null, 25, 40)))
        .isEqualTo("refusal.nothing-to-show");
  }

  @Test
  void aChamberThatOpensTheOxygenBarrierByItsHumidityIsRefused() {
    Brief brief =
        Bench.brief(
            Bench.product(20, null, new OxygenLimit(500, 0), null),
            Bench.sachet(60, 120, 10),
            25,
            40,
            365);
    var storage =
        AcceleratedStorage.of(
            BarrierModel.of(Bench.context(brief).with("chamber-humidity", 95)),
            LayerNotation.readStructure("bopet 12 um / pvoh-coating 2 g/m2 @lacquering"));
    assertThat(storage.refusal().orElseThrow().key()).isEqualTo("refusal.opened");
  }

  /**
   * Published, abstract PMC9998771: garlic powder keeps 24 and 78 days at 40 °C 90 % RH, 1.32 and
   * 4.30 years at 5 °C 70 % RH behind two polyethylenes: one ratio, as only conductance differs.
   */
  @Test
  void twoFilmsKeepTheirRatioInEveryClimate() {
    MoistureLimit garlic = new MoistureLimit(new Isotherm.Gab(0.05, 10, 0.95), 100, 0.2, 0.45);
    Balance hot = Courses.moisture(garlic, 0, Courses.constant(40, 90));
    Balance cold = Courses.moisture(garlic, 0, Courses.constant(5, 70));
    double ratio = Courses.days(hot, 1e-5) / Courses.days(hot, 3.25e-5);
    assertThat(ratio).isCloseTo(78.0 / 24, withPercentage(0.1));
    assertThat(Courses.days(cold, 1e-6) / Courses.days(cold, 3.25e-6))
        .isCloseTo(ratio, withPercentage(0.1));
    assertThat(4.30 / 1.32).isCloseTo(ratio, withPercentage(0.3));
    assertThat(SaturatedVapour.pascal(40) * 0.9 / SaturatedVapour.pascal(5) / 0.7)
        .isCloseTo(10.88, withPercentage(0.1));
  }

  /** Published, Coffee Science article 2150: 0.017 g at 25/75 and 0.048 g at 38/90 behind foil. */
  @Test
  void leaksAndNotPolyethyleneControlTheCoffeePack() {
    double vapour = 0.75 * SaturatedVapour.pascal(25) / (0.90 * SaturatedVapour.pascal(38));
    assertThat(vapour).isCloseTo(0.397899, withPercentage(0.01));
    assertThat(vapour * Arrhenius.factor(6.91, 38, 25))
        .isCloseTo(0.017 / 0.048, withPercentage(0.5));
    assertThat(vapour * Arrhenius.factor(33.5, 38, 25)).isCloseTo(0.2262, withPercentage(0.1));
  }
}
