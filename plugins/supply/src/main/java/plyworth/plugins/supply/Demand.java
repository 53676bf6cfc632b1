package plyworth.plugins.supply;

import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.ScoringContext;

/**
 * What one order asks of plant and suppliers.
 *
 * @param brief the brief
 * @param areaM2 area of web bought, and run by each pass: packs · film of a pack / layout
 *     efficiency · (1 + waste allowance)
 */
record Demand(Brief brief, double areaM2) {

  static final String WASTE_ALLOWANCE = "waste-allowance";

  static Demand of(ScoringContext context) {
    Brief brief = context.brief();
    double slitM2 = brief.order().packs() * brief.pack().filmAreaM2() / brief.layoutEfficiency();
    return new Demand(brief, slitM2 * (1 + context.parameter(WASTE_ALLOWANCE)));
  }

  /** Width of the web that runs, mm. */
  double webMm() {
    return brief.order().motherWebMm();
  }

  /** Print stations that the colours of the order take at least. */
  double colours() {
    return brief.order().newColours();
  }

  /** Lanes that fit a web of a width in mm. */
  int lanes(double widthMm) {
    double usable = widthMm - 2 * brief.order().edgeTrimMm();
    return Math.max(0, (int) Math.floor(usable / brief.pack().laneWidthMm()));
  }

  /** A sum for the order as one for 1000 packs. */
  double perThousand(double sum) {
    return sum / brief.order().packs() * 1000;
  }
}
