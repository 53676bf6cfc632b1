package plyworth.shared.structure;

import java.util.Objects;

/**
 * A material with an amount, the process that puts it there, and, where it matters, the side.
 *
 * <p>Print is a layer: its process is the print method, its amount the dry ink over the whole web,
 * its coverage the mean tone coverage.
 *
 * @param material material id
 * @param amount gauge or dry grammage, greater than 0
 * @param unit what the amount is
 * @param process process id; empty for a web that is bought and unwound
 * @param side the side that faces outside
 * @param coverage covered share of the area for print, above 0 and up to 1; NaN when not stated
 */
public record Layer(
    String material, double amount, AmountUnit unit, String process, Side side, double coverage) {

  /**
   * Checks the amount and the coverage.
   *
   * @throws IllegalArgumentException for an amount that is not positive and finite, or a coverage
   *     outside (0, 1]
   */
  public Layer {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(process, "process");
    Objects.requireNonNull(side, "side");
    if (!(amount > 0) || !Double.isFinite(amount)) {
      throw new IllegalArgumentException(
          ("the amount of " + material + " is " + amount)
              + "; it must be greater than 0 "
              + unit.unit().symbol());
    }
    if (!Double.isNaN(coverage) && !(coverage > 0 && coverage <= 1)) {
      throw new IllegalArgumentException(
          "the coverage of " + material + " must be above 0 % and at most 100 %");
    }
  }

  /** A bought web of a gauge in µm. */
  public static Layer web(String material, double gaugeUm) {
    return new Layer(material, gaugeUm, AmountUnit.UM, "", Side.UNSTATED, Double.NaN);
  }

  /** A bought web, or a layer put down by a process, of a grammage in g/m². */
  public static Layer grams(String material, double gsm, String process) {
    return new Layer(material, gsm, AmountUnit.GSM, process, Side.UNSTATED, Double.NaN);
  }

  /** A layer of a gauge in µm put down by a process. */
  public static Layer gauge(String material, double gaugeUm, String process) {
    return new Layer(material, gaugeUm, AmountUnit.UM, process, Side.UNSTATED, Double.NaN);
  }

  /**
   * Gauge in µm.
   *
   * @param density kg/m³
   */
  public double gaugeUm(double density) {
    return unit == AmountUnit.UM ? amount : amount * 1000 / density;
  }

  /**
   * Grammage in g/m².
   *
   * @param density kg/m³
   */
  public double grammage(double density) {
    return unit == AmountUnit.GSM ? amount : amount * density / 1000;
  }

  @Override
  public String toString() {
    return LayerNotation.write(this);
  }
}
