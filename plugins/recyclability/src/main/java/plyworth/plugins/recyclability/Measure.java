package plyworth.plugins.recyclability;

import java.util.Locale;

/**
 * A number that rules speak of. Shares are mass shares of the whole dry laminate, inks and
 * adhesives in the denominator, from 0 to 1; yes and no are 1 and 0.
 *
 * <p>Those up to {@link #FIBRE_YIELD} follow from the layerwise state, the others need the
 * composition by family, the brief or a declaration.
 */
enum Measure {
  FIBRE,
  NON_FIBRE,
  PLASTIC_LAYERS,
  POLYETHYLENE,
  POLYPROPYLENE,
  POLYOLEFIN,
  MAIN_POLYOLEFIN,
  POLYESTER,
  POLYAMIDE,
  EVOH,
  CHLORINATED,
  FOREIGN_POLYMER,
  FOIL,
  VAPOUR_METAL,
  /** Gauge of all vapour-deposited metal together, µm. */
  VAPOUR_GAUGE,
  /** Whether paper is the heaviest of paper, plastic layers and aluminium: a plurality. */
  PAPER_LEADS,
  /** Whether plastic layers together are the heaviest. */
  PLASTIC_LEADS,
  /** Whether polyethylene is the heaviest polymer. */
  POLYETHYLENE_LEADS,
  /** Sides of the paper that carry polymer, 0 to 2. */
  POLYMER_SIDES,
  /** Share that is recyclable by design, strict. */
  RECYCLABLE,
  /** Class number by the main rule sets of the region. */
  CLASS,
  /** Last year of the platform. */
  END_YEAR,
  /** Share of the main material, before any disqualifier. */
  TARGET,
  FIBRE_YIELD,

  ADHESIVE,
  INK,
  LACQUER,
  /** Lacquers, dispersions, polyvinyl alcohol and PVDC together. */
  COATING,
  /** The heaviest of paper, plastic layers and aluminium that does not lead. */
  SECOND_MATERIAL,
  /** Share that is recyclable by design, with tolerated minor constituents. */
  RECYCLABLE_TOLERANT,
  /** Dry reject of a repulping, estimated. */
  REJECT,
  /** Largest printed share of the area; NaN when a print does not state it. */
  PRINT_COVERAGE,
  /** Smaller side of the flat pack, mm. */
  SMALLER_SIDE,
  LABORATORY_CERTIFICATE,
  TAKE_BACK_EVIDENCE,
  RECYCLED_CONTENT;

  /** Number of measures. */
  static final int COUNT = values().length;

  /** The name in rule files. */
  String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the layerwise form knows it. */
  boolean layerwise() {
    return ordinal() <= FIBRE_YIELD.ordinal();
  }
}
