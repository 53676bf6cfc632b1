package plyworth.plugins.barrier.permeation;

import java.util.Optional;
import plyworth.shared.brief.Brief;

/**
 * A mixture of an alcohol and water at one temperature: p = x·γ·psat with γ after Wilson and psat
 * after Antoine (constants in {@link Alcohol}). Other activity models differ by up to 15 % at 70 %
 * isopropanol.
 *
 * @param alcohol the alcohol
 * @param celsius °C
 * @param l12 Wilson's Λ12 = (V2/V1)·exp(−a12/RT), 1 = alcohol, 2 = water
 * @param l21 Wilson's Λ21 = (V1/V2)·exp(−a21/RT)
 */
public record AlcoholWater(Alcohol alcohol, double celsius, double l12, double l21) {

  private static final double GAS_CONSTANT_CAL = 1.98721;
  private static final double MOLAR_MASS_WATER = 18.0153;
  private static final double VOLUME_WATER = 18.07;

  /** The mixture at a temperature, °C. */
  public static AlcoholWater at(Alcohol alcohol, double celsius) {
    double rt = GAS_CONSTANT_CAL * (celsius + Arrhenius.ZERO_C);
    Alcohol.Wilson wilson = alcohol.wilson();
    double volumes = VOLUME_WATER / wilson.volume();
    return new AlcoholWater(
        alcohol,
        celsius,
        volumes * Math.exp(-wilson.a12() / rt),
        Math.exp(-wilson.a21() / rt) / volumes);
  }

  /** Activity of water over the volatile content of a brief as filled; empty when not known. */
  public static Optional<Double> waterActivity(Brief brief, double celsius) {
    return brief
        .product()
        .volatileContent()
        .filter(content -> content.massFraction() > 0)
        .flatMap(
            content ->
                Alcohol.named(content.substance())
                    .map(alcohol -> AlcoholWater.at(alcohol, celsius))
                    .map(m -> m.waterActivity(fraction(m, content.massFraction()))));
  }

  private static double fraction(AlcoholWater mixture, double strength) {
    return mixture.moleFraction(strength, 1 - strength);
  }

  /** Mole fraction of the alcohol in some of each, g. */
  public double moleFraction(double alcoholG, double waterG) {
    double moles = alcoholG / alcohol.molarMass();
    return moles / (moles + waterG / MOLAR_MASS_WATER);
  }

  /** Activity of the alcohol, partial over saturated pressure, at its mole fraction x: x·γ1. */
  public double alcoholActivity(double x) {
    double y = 1 - x;
    return x / (x + l12 * y) * Math.exp(y * wilson(x, y));
  }

  /** Activity of water at the mole fraction x of the alcohol: (1 − x)·γ2. */
  public double waterActivity(double x) {
    double y = 1 - x;
    return y / (y + l21 * x) * Math.exp(-x * wilson(x, y));
  }

  private double wilson(double x, double y) {
    return l12 / (x + l12 * y) - l21 / (y + l21 * x);
  }

  /** Partial pressure of the alcohol, Pa. */
  double alcoholPa(double x) {
    return alcoholActivity(x) * alcohol.antoine().pascal(celsius);
  }

  /** Partial pressure of water, Pa. */
  double waterPa(double x) {
    return waterActivity(x) * Alcohol.Antoine.WATER.pascal(celsius);
  }
}
