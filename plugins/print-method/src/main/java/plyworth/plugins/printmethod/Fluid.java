package plyworth.plugins.printmethod;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Resources;

/**
 * A pure fluid that evaporates in a dryer.
 *
 * @param name identifier
 * @param molarMass g/mol
 * @param latentHeat heat of vaporisation at 25 °C, kJ/kg
 * @param lfl lower flammable limit in air, volume %; NaN when it does not burn
 * @param carbon mass fraction of carbon
 * @param lhv lower heating value of the liquid, MJ/kg; NaN when it does not burn
 */
public record Fluid(
    String name, double molarMass, double latentHeat, double lfl, double carbon, double lhv) {

  private static final Map<String, Fluid> TABLE = read();

  /** Carbon dioxide per carbon by mass: ratio of the molar masses. */
  private static final double CO2_PER_CARBON = 44.0095 / 12.0107;

  /** The fluid of that name. */
  public static Fluid named(String name) {
    return TABLE.get(name);
  }

  /** Carbon dioxide from burning, kg/kg. */
  public double carbonDioxide() {
    return carbon * CO2_PER_CARBON;
  }

  private static Map<String, Fluid> read() {
    List<String> header =
        List.of("fluid", "molar-mass", "latent-heat", "lfl", "carbon", "lhv", "source");
    Map<String, Fluid> fluids = new LinkedHashMap<>();
    String text = Resources.text(Fluid.class, "fluids.csv");
    for (Csv.Row row : Csv.read(text, "fluids.csv", header)) {
      fluids.put(
          row.text("fluid"),
          new Fluid(
              row.text("fluid"),
              row.number("molar-mass"),
              row.number("latent-heat"),
              row.numberOrUnknown("lfl"),
              row.number("carbon"),
              row.numberOrUnknown("lhv")));
    }
    return Map.copyOf(fluids);
  }
}
