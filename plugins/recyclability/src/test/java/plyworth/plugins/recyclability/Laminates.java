package plyworth.plugins.recyclability;

/** Laminates that the checks are worked on; dry grammages, invented. */
final class Laminates {

  private static final String INK = "ink-nc %s g/m2 @flexo-solvent";
  private static final String GLUE = "adhesive-pu-solventless %s g/m2 @solventless";
  private static final String METAL = "vapour-metal 0.108 g/m2 @lacquering";

  /** Today’s pack: paper, foil, polyethylene. */
  static final String PAPER_FOIL =
      "kraft-paper 50 g/m2 / ldpe 12 g/m2 @extrusion-lamination / aluminium-foil 18.9 g/m2"
          + " / ldpe 25 g/m2 @extrusion-coating";

  static final String PAPER_PE = "kraft-paper 60 g/m2 / ldpe 15 g/m2 @extrusion-coating";

  static final String DISPERSION_PAPER =
      INK.formatted("1")
          + " / kraft-paper 70 g/m2 / dispersion-coating 3.5 g/m2 @dispersion-coating";

  static final String PAPER_METALLISED_POLYESTER =
      "kraft-paper 50 g/m2 / ldpe 10 g/m2 @extrusion-lamination / "
          + METAL
          + " / bopet 16.8 g/m2 / "
          + GLUE.formatted("2")
          + " / lldpe 27.6 g/m2";

  static final String MONO_PE_EVOH = monoPe("23.46", "3.54");

  static final String BOPP_LIGHT_PRINT = bopp("1.5", "1.8", "16.29");

  static final String BOPP_HEAVY_PRINT = bopp("3", "2", "13.575");

  static final String POLYESTER_FOIL =
      "bopet 16.8 g/m2 / "
          + INK.formatted("1.5")
          + " / "
          + GLUE.formatted("2")
          + " / aluminium-foil 18.9 g/m2 / "
          + GLUE.formatted("2")
          + " / lldpe 55.2 g/m2";

  static final String POLYESTER_PE =
      "bopet 16.8 g/m2 / "
          + INK.formatted("1.5")
          + " / "
          + GLUE.formatted("2")
          + " / lldpe 55.2 g/m2";

  static final String BOPP_PE =
      "bopp 18.1 g/m2 / "
          + INK.formatted("1.5")
          + " / "
          + GLUE.formatted("2")
          + " / lldpe 27.6 g/m2";

  static final String PE_POLYAMIDE =
      "ldpe 24.84 g/m2 / tie-resin 2.76 g/m2 @coextruded / pa6-cast 13.56 g/m2 @coextruded"
          + " / tie-resin 2.76 g/m2 @coextruded / ldpe 24.84 g/m2 @coextruded";

  static final String PAPER_BIOPOLYESTER =
      "kraft-paper 60 g/m2 / " + GLUE.formatted("2") + " / pbat 31.5 g/m2";

  static final String PE_PAPER_PE =
      "ldpe 12 g/m2 @extrusion-coating / kraft-paper 80 g/m2 / ldpe 15 g/m2 @extrusion-coating";

  static final String CARTON =
      "ldpe 12 g/m2 @extrusion-coating / kraft-paper 210 g/m2 / ldpe 20 g/m2"
          + " @extrusion-lamination / aluminium-foil 17.55 g/m2 / ldpe 35 g/m2 @extrusion-coating";

  static final String FOIL_FREE_PAPER =
      "kraft-paper 70 g/m2 / pvoh-coating 2 g/m2 @dispersion-coating / "
          + METAL
          + " / heat-seal-lacquer 1 g/m2 @lacquering / ldpe 10 g/m2 @extrusion-coating";

  static final String MONO_PE =
      "mdo-pe 23.75 g/m2 / "
          + INK.formatted("1")
          + " / "
          + GLUE.formatted("1.5")
          + " / lldpe 46 g/m2";

  private Laminates() {}

  private static String monoPe(String skin, String evoh) {
    return "mdo-pe 23.75 g/m2 / "
        + INK.formatted("1.5")
        + " / "
        + GLUE.formatted("2")
        + (" / lldpe " + skin + " g/m2 / tie-resin 2.76 g/m2 @coextruded / evoh-32 " + evoh)
        + (" g/m2 @coextruded / tie-resin 2.76 g/m2 @coextruded / lldpe " + skin)
        + " g/m2 @coextruded";
  }

  private static String bopp(String ink, String glue, String inner) {
    return "bopp 18.1 g/m2 / "
        + INK.formatted(ink)
        + " / "
        + GLUE.formatted(glue)
        + " / "
        + METAL
        + (" / bopp " + inner + " g/m2");
  }
}
