package plyworth.plugins.recyclability;

import java.util.Locale;

/** The stream a laminate would have to take: an engineering assumption. */
enum Route {
  /** Ordinary paper mill. */
  CONVENTIONAL_MILL,
  /** Mill for foil laminates and two-sided coatings. */
  SPECIALISED_MILL,
  /** Polyethylene film. */
  PE_FILM,
  /** Polypropylene film. */
  PP_FILM,
  /** Mixed polyolefin film. */
  MIXED_POLYOLEFIN,
  /** None of these. */
  NONE;

  /** The route of a structure, whether or not something disqualifies it there. */
  static Route of(Case scored, Proxy proxy) {
    if (scored.of(Measure.PAPER_LEADS) == 1) {
      boolean ordinary = scored.of(Measure.POLYMER_SIDES) < 2 && !scored.has(Measure.FOIL);
      return ordinary ? CONVENTIONAL_MILL : SPECIALISED_MILL;
    }
    double least = proxy.filmShare() - Condition.TOLERANCE;
    if (scored.of(Measure.PLASTIC_LEADS) != 1 || scored.of(Measure.POLYOLEFIN) < least) {
      return NONE;
    }
    if (scored.of(Measure.MAIN_POLYOLEFIN) < least) {
      return MIXED_POLYOLEFIN;
    }
    return scored.of(Measure.POLYETHYLENE) >= least ? PE_FILM : PP_FILM;
  }

  /** Key of its name. */
  String key() {
    return "route." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
