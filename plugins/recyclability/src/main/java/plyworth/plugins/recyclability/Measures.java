package plyworth.plugins.recyclability;

/** Measures of a finished structure out of its {@link Ledger} state. */
final class Measures {

  /** Density of vapour-deposited aluminium, g/cm³: the bulk figure (handbook; from memory). */
  static final double ALUMINIUM_DENSITY = 2.70;

  private Measures() {}

  /** Writes every measure that is a mass share, a leading class or a side. */
  static void fill(double[] s, double[] m) {
    double fibre = s[Group.FIBRE.ordinal()];
    double pe = s[Group.POLYETHYLENE.ordinal()];
    double pp = s[Group.POLYPROPYLENE.ordinal()];
    double other = otherPlastics(s);
    double plastic = pe + pp + other;
    double aluminium = s[Group.FOIL.ordinal()] + s[Group.VAPOUR.ordinal()];
    double total = fibre + plastic + aluminium + s[Group.INK.ordinal()] + s[Group.OTHER.ordinal()];
    double per = 1 / total;
    shares(s, per, m);
    put(m, Measure.NON_FIBRE, (total - fibre) * per);
    put(m, Measure.PLASTIC_LAYERS, plastic * per);
    put(m, Measure.POLYOLEFIN, (pe + pp) * per);
    put(m, Measure.MAIN_POLYOLEFIN, Math.max(pe, pp) * per);
    put(m, Measure.VAPOUR_GAUGE, s[Group.VAPOUR.ordinal()] / ALUMINIUM_DENSITY);
    double slack = Condition.TOLERANCE * total;
    boolean paperLeads = fibre > 0 && fibre >= Math.max(plastic, aluminium) - slack;
    flag(m, Measure.PAPER_LEADS, paperLeads);
    flag(m, Measure.PLASTIC_LEADS, !paperLeads && plastic > 0 && plastic >= aluminium - slack);
    flag(m, Measure.POLYETHYLENE_LEADS, pe > 0 && pe >= Math.max(pp, heaviestOther(s)));
    put(m, Measure.POLYMER_SIDES, sides(s, fibre, plastic));
  }

  private static void shares(double[] s, double per, double[] m) {
    put(m, Measure.FIBRE, s[Group.FIBRE.ordinal()] * per);
    put(m, Measure.POLYETHYLENE, s[Group.POLYETHYLENE.ordinal()] * per);
    put(m, Measure.POLYPROPYLENE, s[Group.POLYPROPYLENE.ordinal()] * per);
    put(m, Measure.POLYESTER, s[Group.POLYESTER.ordinal()] * per);
    put(m, Measure.POLYAMIDE, s[Group.POLYAMIDE.ordinal()] * per);
    put(m, Measure.EVOH, s[Group.EVOH.ordinal()] * per);
    put(m, Measure.CHLORINATED, s[Group.CHLORINATED.ordinal()] * per);
    put(m, Measure.FOREIGN_POLYMER, s[Group.FOREIGN.ordinal()] * per);
    put(m, Measure.FOIL, s[Group.FOIL.ordinal()] * per);
    put(m, Measure.VAPOUR_METAL, s[Group.VAPOUR.ordinal()] * per);
    put(m, Measure.INK, s[Group.INK.ordinal()] * per);
  }

  /** Grammage of all polymers but polyethylene and polypropylene. */
  static double otherPlastics(double[] s) {
    return s[Group.POLYESTER.ordinal()]
        + s[Group.POLYAMIDE.ordinal()]
        + s[Group.EVOH.ordinal()]
        + s[Group.COATING.ordinal()]
        + s[Group.CHLORINATED.ordinal()]
        + s[Group.FOREIGN.ordinal()];
  }

  /** Grammage of the heaviest polymer but polyethylene and polypropylene. */
  static double heaviestOther(double[] s) {
    double polyesterOrAmide = Math.max(s[Group.POLYESTER.ordinal()], s[Group.POLYAMIDE.ordinal()]);
    double evohOrCoating = Math.max(s[Group.EVOH.ordinal()], s[Group.COATING.ordinal()]);
    double rest = Math.max(s[Group.CHLORINATED.ordinal()], s[Group.FOREIGN.ordinal()]);
    return Math.max(polyesterOrAmide, Math.max(evohOrCoating, rest));
  }

  private static double sides(double[] s, double fibre, double plastic) {
    if (fibre <= 0 || plastic <= 0) {
      return 0;
    }
    double outer = s[Ledger.OUTER_FACE] == Ledger.POLYMER_FACE ? 1 : 0;
    double inner = s[Ledger.INNER_FACE] == Ledger.POLYMER_FACE ? 1 : 0;
    return Math.max(1, outer + inner);
  }

  private static void put(double[] m, Measure measure, double figure) {
    m[measure.ordinal()] = figure;
  }

  private static void flag(double[] m, Measure measure, boolean yes) {
    m[measure.ordinal()] = yes ? 1 : 0;
  }
}
