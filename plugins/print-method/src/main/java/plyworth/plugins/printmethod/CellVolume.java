package plyworth.plugins.printmethod;

/**
 * Liquid that engraved cells put down.
 *
 * @param volume cell volume per area, cm³/m², which is µm of liquid
 * @param transfer share of the cell that ends on the web
 * @param density of the liquid, g/cm³
 */
public record CellVolume(double volume, double transfer, double density) {

  /** cm³/m² in a billion cubic micrometres per square inch. */
  public static final double BCM = 1.5500031;

  /** Wet solid, g/m²: V·T·ρ. */
  public double wetSolid() {
    return volume * transfer * density;
  }

  /** Wet lay-down of a tone, g/m². */
  public double wet(double coverage) {
    return wetSolid() * coverage;
  }

  /** Inkings that a dry lay-down takes when each covers the same share of the area; a fraction. */
  public double inkings(double dry, double solids, double coverage) {
    return dry / (wet(coverage) * solids);
  }
}
