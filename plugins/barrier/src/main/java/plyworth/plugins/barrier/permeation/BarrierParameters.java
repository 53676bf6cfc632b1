package plyworth.plugins.barrier.permeation;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.Text;

/** The numbers a user may set. */
public final class BarrierParameters {

  /** Shelf life over that of the brief, below which a structure is blocked. */
  public static final String BLOCK_MARGIN = "block-margin";

  /** Diameter of a pinhole in foil, µm. */
  public static final String PINHOLE_DIAMETER = "pinhole-diameter";

  /** Low-density polyethylene over a pinhole in foil, µm. */
  public static final String PINHOLE_COVER = "pinhole-cover";

  static final String ALCOHOL_ACTIVATION = "alcohol-activation";

  /** Days in which a product takes up half the oxygen of a tight head-space; 0 for at once. */
  public static final String OXYGEN_HALF_LIFE = "oxygen-half-life";

  /** Open channels in the seals of a pack, on average. */
  public static final String LEAKS_PER_PACK = "leaks-per-pack";

  static final String LEAK_DIAMETER = "leak-diameter";
  static final String LEAK_LENGTH = "leak-length";

  /** Temperature of the chamber for accelerated storage, °C. */
  public static final String CHAMBER_TEMPERATURE = "chamber-temperature";

  /** Relative humidity of that chamber, %. */
  public static final String CHAMBER_HUMIDITY = "chamber-humidity";

  /** Shelf life is not promised beyond this many times the brief (common practice). */
  public static final double CAP = 3;

  private BarrierParameters() {}

  /** All of them, in the order in which forms show them. */
  public static List<Parameter> all() {
    List<Parameter> all = new ArrayList<>();
    all.add(parameter(BLOCK_MARGIN, "", 1, 0, CAP));
    for (Damage.Kind kind : Damage.Kind.values()) {
      all.add(parameter(kind.parameter(), "", kind.standard(), 1, 1000));
    }
    all.add(parameter(PINHOLE_DIAMETER, "um", 50, 1, 500));
    all.add(parameter(PINHOLE_COVER, "um", 12, 1, 200));
    all.add(parameter(LEAKS_PER_PACK, "", 0, 0, 100));
    all.add(parameter(LEAK_DIAMETER, "um", 50, 1, 1000));
    all.add(parameter(LEAK_LENGTH, "mm", 0, 0, 50));
    all.add(parameter(ALCOHOL_ACTIVATION, "kJ/mol", 60, 0, 120));
    all.add(parameter(OXYGEN_HALF_LIFE, "days", 0, 0, 100_000));
    all.add(parameter(CHAMBER_TEMPERATURE, "degC", 40, 0, 70));
    all.add(parameter(CHAMBER_HUMIDITY, "%", 75, 0, 100));
    return List.copyOf(all);
  }

  private static Parameter parameter(
      String id, String unit, double standard, double lowest, double highest) {
    Text title = Text.of("parameter." + id);
    Text help = Text.of("parameter." + id + ".help");
    return new Parameter(id, title, unit, standard, lowest, highest, help);
  }
}
