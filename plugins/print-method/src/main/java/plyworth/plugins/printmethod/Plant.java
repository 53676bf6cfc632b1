package plyworth.plugins.printmethod;

import plyworth.shared.route.Process;
import plyworth.shared.scoring.ScoringContext;

/**
 * The printing plant as the parameters describe it.
 *
 * @param context brief, libraries, parameters and draw
 * @param drying hot-air dryers
 * @param oxidiser thermal oxidiser
 */
record Plant(ScoringContext context, Drying drying, Oxidiser oxidiser) {

  /** Temperature of exhaust as it enters the oxidiser, °C (from memory). */
  private static final double OXIDISER_INLET = 60;

  /** How much of the abatement runs. */
  enum Control {
    /** None is installed. */
    ABSENT,
    /** Capture and destruction of each process. */
    OF_THE_PROCESS,
    /** Capture and destruction as set. */
    AS_SET
  }

  static Plant of(ScoringContext context) {
    Drying drying =
        new Drying(
            context.parameter(Parameters.CONCENTRATION),
            context.parameter(Parameters.HUMIDITY_RISE),
            context.parameter(Parameters.AIR_RISE),
            context.parameter(Parameters.WEB_RISE));
    Oxidiser oxidiser =
        new Oxidiser(
            context.parameter(Parameters.CHAMBER),
            OXIDISER_INLET,
            context.parameter(Parameters.RECOVERY));
    return new Plant(context, drying, oxidiser);
  }

  /** How much of the abatement runs; the parameter is rounded. */
  Control control() {
    return Control.values()[(int) Math.rint(context.parameter(Parameters.ABATEMENT))];
  }

  /** Share of the solvent that stays in the web. */
  double retained() {
    return context.parameter(Parameters.RETAINED);
  }

  /** Whether the press refreshes the treatment of the web in line. */
  boolean corona() {
    return context.parameter(Parameters.CORONA) >= 0.5;
  }

  /** Whether webs are ordered treated for print. */
  boolean treatedWebs() {
    return context.parameter(Parameters.TREATED) >= 0.5;
  }

  /** kWh per 1000 m² that a dryer takes to deliver kJ/m². */
  double dryerEnergy(double heat) {
    return heat / Drying.MJ_PER_KWH / context.parameter(Parameters.DRYER_EFFICIENCY);
  }

  /** Abatement behind a process; water-based and cured inks are never led to the oxidiser. */
  Abatement abatement(Process process, InkKind kind) {
    if (kind != InkKind.SOLVENT) {
      return Abatement.ABSENT;
    }
    return switch (control()) {
      case ABSENT -> Abatement.ABSENT;
      case OF_THE_PROCESS ->
          new Abatement(context.figure(process, "capture"), context.figure(process, "destruction"));
      case AS_SET ->
          new Abatement(
              context.parameter(Parameters.CAPTURE), context.parameter(Parameters.DESTRUCTION));
    };
  }
}
