package plyworth.plugins.printmethod;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * A mixture of flammable fluids.
 *
 * @param shares mass fraction by name of the fluid, adding up to 1
 */
public record Blend(Map<String, Double> shares) {

  /** Volume of one mole of gas at 25 °C and 101.325 kPa, L. */
  static final double MOLAR_VOLUME = 24.46540369658722;

  /** Copies the shares. */
  public Blend {
    shares = Map.copyOf(new TreeMap<>(shares));
  }

  /** Ethanol and ethyl acetate. */
  public static Blend ofEthanol(double share) {
    return new Blend(Map.of("ethanol", share, "ethyl-acetate", 1 - share));
  }

  /** One fluid alone. */
  public static Blend pure(String name) {
    return new Blend(Map.of(name, 1.0));
  }

  /** Heat of vaporisation at 25 °C, kJ/kg; mixing heat left out. */
  public double latentHeat() {
    return byMass(Fluid::latentHeat);
  }

  /** Lower heating value, MJ/kg. */
  public double lhv() {
    return byMass(Fluid::lhv);
  }

  /** Mass fraction of carbon. */
  public double carbon() {
    return byMass(Fluid::carbon);
  }

  /** Carbon dioxide from burning, kg/kg. */
  public double carbonDioxide() {
    return byMass(Fluid::carbonDioxide);
  }

  /** Mean molar mass, g/mol. */
  public double molarMass() {
    return 1 / byMass(f -> 1 / f.molarMass());
  }

  /** Mole fraction of one fluid. */
  public double moleFraction(String name) {
    return shares.get(name) / Fluid.named(name).molarMass() * molarMass();
  }

  /** Lower flammable limit, volume %: Le Chatelier's rule, 1/L = Σ yⱼ/Lⱼ with mole fractions. */
  public double lflPercent() {
    double sum = 0;
    for (String name : shares.keySet()) {
      sum += moleFraction(name) / Fluid.named(name).lfl();
    }
    return 1 / sum;
  }

  /** Lower flammable limit, g of vapour per m³ at 25 °C. */
  public double lflGrams() {
    return lflPercent() / 100 * molarMass() / MOLAR_VOLUME * 1000;
  }

  /** Name and share of each fluid, for tables. */
  public String plain() {
    StringBuilder text = new StringBuilder();
    for (Map.Entry<String, Double> share : new TreeMap<>(shares).entrySet()) {
      if (share.getValue() > 0) {
        text.append(text.length() > 0 ? " + " : "");
        text.append(Math.round(100 * share.getValue())).append(" % ").append(share.getKey());
      }
    }
    return text.toString();
  }

  private double byMass(ToDoubleFunction<Fluid> figure) {
    double sum = 0;
    for (Map.Entry<String, Double> share : new TreeMap<>(shares).entrySet()) {
      sum += share.getValue() * figure.applyAsDouble(Fluid.named(share.getKey()));
    }
    return sum;
  }
}
