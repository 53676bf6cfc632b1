package plyworth.shared.material;

/**
 * A property as the plugin that reads it declares it.
 *
 * @param id identifier, for example {@code o2-permeability}
 * @param unit unit of its figures, in plain spelling
 * @param meaning what it is and under which conditions, in one sentence: the key of a text of the
 *     plugin, so that every language has it, or the sentence itself
 * @param along what a table of it runs along
 * @param lowest smallest physically possible figure
 * @param highest largest physically possible figure
 */
public record PropertyDefinition(
    String id, String unit, String meaning, Along along, double lowest, double highest) {

  /** What the figures of a property may depend on. */
  public enum Along {
    /** Nothing. */
    NOTHING,
    /** Gauge of the layer in µm: the property belongs to the layer as a whole. */
    GAUGE,
    /** Relative humidity in %. */
    HUMIDITY
  }
}
