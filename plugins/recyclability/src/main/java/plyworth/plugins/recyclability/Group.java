package plyworth.plugins.recyclability;

import java.util.Arrays;

/**
 * Families that no rule tells apart, weighed together. The ordinal is the component of the
 * layerwise state.
 */
enum Group {
  /** Paper web as sold: fibre, filler, starch, mineral coating. */
  FIBRE(Kind.PAPER),
  /** Polyethylene, with tie resins and ethylene copolymers. */
  POLYETHYLENE(Kind.PLASTIC),
  /** Polypropylene. */
  POLYPROPYLENE(Kind.PLASTIC),
  /** Polyester. */
  POLYESTER(Kind.PLASTIC),
  /** Polyamide. */
  POLYAMIDE(Kind.PLASTIC),
  /** Ethylene-vinyl alcohol. */
  EVOH(Kind.PLASTIC),
  /** Polymer dispersions and polyvinyl alcohol. */
  COATING(Kind.PLASTIC),
  /** Polyvinylidene chloride. */
  CHLORINATED(Kind.PLASTIC),
  /** Other polymers that no polyolefin stream takes. */
  FOREIGN(Kind.PLASTIC),
  /** Aluminium foil. */
  FOIL(Kind.ALUMINIUM),
  /** Vapour-deposited aluminium. */
  VAPOUR(Kind.ALUMINIUM),
  /** Dry ink. */
  INK(Kind.NEITHER),
  /** Adhesive, lacquer, wax. */
  OTHER(Kind.NEITHER);

  /** The class of material that a group counts to when a laminate is named after one. */
  enum Kind {
    /** Paper. */
    PAPER,
    /** Any polymer layer. */
    PLASTIC,
    /** Aluminium, foil and vapour. */
    ALUMINIUM,
    /** Counts to the total alone. */
    NEITHER
  }

  /** Number of groups. */
  static final int COUNT = values().length;

  /** Ordinals of the polymer groups. */
  static final int[] PLASTICS =
      Arrays.stream(values()).filter(g -> g.kind == Kind.PLASTIC).mapToInt(Enum::ordinal).toArray();

  final Kind kind;

  Group(Kind kind) {
    this.kind = kind;
  }
}
