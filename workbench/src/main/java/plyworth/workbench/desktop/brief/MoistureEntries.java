package plyworth.workbench.desktop.brief;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.brief.Sorption;
import plyworth.workbench.desktop.word.Words;

/** How moisture spoils the product, in the form. */
final class MoistureEntries {

  private static final double ROOM_C = 25;
  private static final int BISECTIONS = 50;

  private MoistureEntries() {}

  static void write(MoistureLimit moisture, BriefDraft.Writing draft) {
    write(moisture.sorption(), draft);
    draft
        .put(BriefField.DRY_MASS, moisture.dryMassG())
        .put(BriefField.INITIAL_ACTIVITY, moisture.initialActivity())
        .put(BriefField.CRITICAL_ACTIVITY, moisture.criticalActivity())
        .put(BriefField.SPOILT_BY, moisture.spoiltBy());
  }

  private static void write(Sorption sorption, BriefDraft.Writing draft) {
    if (sorption instanceof KnownProduct product) {
      draft.put(BriefField.SORPTION, "library").put(BriefField.KNOWN_PRODUCT, product.id());
    } else if (sorption instanceof Isotherm.Linear linear) {
      draft.put(BriefField.SORPTION, "linear").put(BriefField.SLOPE, linear.slope());
    } else if (sorption instanceof Isotherm.Gab gab) {
      draft
          .put(BriefField.SORPTION, "gab")
          .put(BriefField.MONOLAYER, gab.m0())
          .put(BriefField.GAB_C, gab.c())
          .put(BriefField.GAB_K, gab.k());
    } else if (sorption instanceof Isotherm.Deliquescent crystals) {
      draft
          .put(BriefField.SORPTION, "deliquescent")
          .put(BriefField.DELIQUESCENCE, crystals.deliquescence())
          .put(BriefField.ALLOWED_UPTAKE, crystals.allowedUptake());
    }
  }

  static MoistureLimit read(BriefAnswers answers, Optional<Climate> climate) {
    double celsius = climate.map(Climate::temperatureC).orElse(ROOM_C);
    Optional<Sorption> sorption = answers.made(BriefField.SORPTION, () -> sorption(answers));
    Optional<Isotherm> isotherm = sorption.map(s -> s.at(celsius));
    double initial = activity(answers, BriefField.INITIAL_ACTIVITY, isotherm);
    double critical = activity(answers, BriefField.CRITICAL_ACTIVITY, isotherm);
    MoistureLimit.Way way = answers.choice(BriefField.SPOILT_BY, MoistureLimit.Way.values());
    boolean crystals = isotherm.filter(Isotherm.Deliquescent.class::isInstance).isPresent();
    if (crystals && way == MoistureLimit.Way.DRYING) {
      answers.fault(BriefField.SPOILT_BY, Words.of("form.crystals-dry"));
    }
    if (sorption.orElse(null) instanceof KnownProduct product) {
      beyond(answers, BriefField.INITIAL_ACTIVITY, initial, product);
      beyond(answers, BriefField.CRITICAL_ACTIVITY, critical, product);
    }
    return new MoistureLimit(
        sorption.orElse(new Isotherm.Linear(1)),
        answers.figure(BriefField.DRY_MASS),
        initial,
        critical,
        way);
  }

  private static void beyond(
      BriefAnswers answers, BriefField field, double activity, KnownProduct product) {
    double highest = product.figure(KnownProduct.HIGHEST_ACTIVITY).typical();
    if (activity > highest) {
      answers.fault(field, Words.of("form.beyond", Measure.PLAIN.write(highest)));
    }
  }

  private static Sorption sorption(BriefAnswers answers) {
    return switch (answers.text(BriefField.SORPTION)) {
      case "library" ->
          ProductLibrary.standard().find(answers.text(BriefField.KNOWN_PRODUCT)).orElseThrow();
      case "gab" ->
          new Isotherm.Gab(
              answers.figure(BriefField.MONOLAYER),
              answers.figure(BriefField.GAB_C),
              answers.figure(BriefField.GAB_K));
      case "linear" -> new Isotherm.Linear(answers.figure(BriefField.SLOPE));
      default ->
          new Isotherm.Deliquescent(
              answers.figure(BriefField.DELIQUESCENCE), answers.figure(BriefField.ALLOWED_UPTAKE));
    };
  }

  /** A water activity, or the one at which the isotherm holds a moisture typed in per cent. */
  private static double activity(
      BriefAnswers answers, BriefField field, Optional<Isotherm> isotherm) {
    String typed = answers.text(field).strip();
    if (!typed.endsWith("%") || isotherm.isEmpty()) {
      return answers.figure(field);
    }
    try {
      double moisture = Measure.MOISTURE.read(typed);
      double activity = activityOf(moisture, isotherm.get());
      if (Double.isNaN(activity)) {
        throw new WrongEntry(Words.of("form.no-activity", typed));
      }
      return activity;
    } catch (WrongEntry e) {
      answers.fault(field, e.getMessage());
      return Double.NaN;
    }
  }

  /** A water activity as it is typed, to three digits. */
  static String rounded(double activity) {
    return Measure.PLAIN.write(
        new BigDecimal(activity).round(new MathContext(3, RoundingMode.DOWN)).doubleValue());
  }

  /** The water activity at which an isotherm holds a moisture, g/g dry; NaN when it never does. */
  private static double activityOf(double moisture, Isotherm isotherm) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      if (isotherm.moisture(middle) < moisture) {
        low = middle;
      } else {
        high = middle;
      }
    }
    boolean held = moisture >= 0 && Math.abs(isotherm.moisture(low) - moisture) < 1e-6;
    return held && low > 0 ? low : Double.NaN;
  }
}
