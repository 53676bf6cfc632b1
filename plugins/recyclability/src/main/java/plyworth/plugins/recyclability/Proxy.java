package plyworth.plugins.recyclability;

import java.util.List;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Resources;

/**
 * The share of a laminate that is recyclable by design, as long as no delegated act says how it is
 * computed.
 *
 * <p>Strict: the mass share of the target material of the route, 0 when anything disqualifies.
 * Target is the paper where paper leads; where plastic leads it is polyethylene or polypropylene
 * when it makes up the film-route share, else both together. Tolerant: minor constituents are
 * added, each when it does not exceed the tolerated share; ink and lacquer in paper, also adhesive,
 * EVOH and vapour-deposited metal in film. An engineering assumption.
 *
 * @param fibre what keeps a paper laminate out of the fibre streams
 * @param film what keeps a plastic laminate out of the film streams
 * @param filmShare share from which a polyolefin makes a film route
 * @param tolerated share up to which a minor constituent is tolerated
 */
record Proxy(RuleSet fibre, RuleSet film, double filmShare, double tolerated) {

  /** The proxy that comes with the plugin. */
  static final Proxy STANDARD =
      Fields.read(
          JsonText.read(Resources.text(Proxy.class, "proxy.json"), "proxy.json"), Proxy::read);

  private static Proxy read(Fields fields) {
    List<RuleSet> sets = fields.objects("sets", RuleSet::read);
    return new Proxy(
        named(fields, sets, "fibre-route"),
        named(fields, sets, "film-route"),
        fields.number("film-route-share"),
        fields.number("tolerated-share"));
  }

  private static RuleSet named(Fields fields, List<RuleSet> sets, String id) {
    return sets.stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow(
            () -> new DataException(fields.place(), "the set " + id + " is missing", "Add it."));
  }

  /** Share of the main material, before anything disqualifies. */
  double target(double[] m) {
    if (is(m, Measure.PAPER_LEADS)) {
      return m[Measure.FIBRE.ordinal()];
    }
    if (!is(m, Measure.PLASTIC_LEADS)) {
      return m[Measure.FOIL.ordinal()] + m[Measure.VAPOUR_METAL.ordinal()];
    }
    double main = m[Measure.MAIN_POLYOLEFIN.ordinal()];
    double polyolefin = m[Measure.POLYOLEFIN.ordinal()];
    boolean mixed = main < threshold() && polyolefin >= threshold();
    return mixed ? polyolefin : main;
  }

  /** Recyclable share, strict; 0 for a laminate led by aluminium, of which no set here speaks. */
  double strict(double[] m) {
    if (is(m, Measure.PAPER_LEADS)) {
      return fibre.anyFires(m) ? 0 : target(m);
    }
    return is(m, Measure.PLASTIC_LEADS) && !film.anyFires(m) ? target(m) : 0;
  }

  /** Recyclable share with tolerated minor constituents. */
  double tolerant(double[] m, Composition composition) {
    double strict = strict(m);
    if (strict == 0) {
      return 0;
    }
    double sum = strict + minor(composition, Family.INK) + minor(composition, Family.LACQUER);
    if (is(m, Measure.PLASTIC_LEADS)) {
      sum += minor(composition, Family.ADHESIVE) + minor(composition, Family.EVOH);
      sum += composition.share(Family.ALUMINIUM_VAPOUR);
    }
    return sum;
  }

  private double minor(Composition composition, Family family) {
    double share = composition.share(family);
    return share <= tolerated + Condition.TOLERANCE ? share : 0;
  }

  /** Writes the bounds of {@link #target} and {@link #strict}. */
  void bounds(double[] low, double[] high) {
    double[] target = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    double[] strict = target.clone();
    if (is(high, Measure.PAPER_LEADS)) {
      double from = low[Measure.FIBRE.ordinal()];
      double to = high[Measure.FIBRE.ordinal()];
      widen(target, from, to);
      widenUnlessOut(strict, fibre, from, to, low, high);
    }
    if (is(high, Measure.PLASTIC_LEADS)) {
      double from = low[Measure.MAIN_POLYOLEFIN.ordinal()];
      double to = high[Measure.MAIN_POLYOLEFIN.ordinal()];
      if (from < threshold()) {
        double polyolefin = high[Measure.POLYOLEFIN.ordinal()];
        to = polyolefin >= threshold() ? Math.max(to, polyolefin) : to;
      }
      widen(target, from, to);
      widenUnlessOut(strict, film, Math.max(from, threshold()), to, low, high);
    }
    if (!is(low, Measure.PAPER_LEADS) && !is(low, Measure.PLASTIC_LEADS)) {
      widen(target, metal(low), metal(high));
      widen(strict, 0, 0);
    }
    put(Measure.TARGET, target, low, high);
    put(Measure.RECYCLABLE, strict, low, high);
  }

  private static void widenUnlessOut(
      double[] span, RuleSet out, double from, double to, double[] low, double[] high) {
    if (!out.mustFire(low, high) && to >= from) {
      widen(span, from, to);
    }
    if (out.mayFire(low, high)) {
      widen(span, 0, 0);
    }
  }

  private static void widen(double[] span, double from, double to) {
    RuleSet.widen(span, from);
    RuleSet.widen(span, to);
  }

  private static double metal(double[] ends) {
    return Math.min(1, ends[Measure.FOIL.ordinal()] + ends[Measure.VAPOUR_METAL.ordinal()]);
  }

  private static void put(Measure measure, double[] span, double[] low, double[] high) {
    low[measure.ordinal()] = span[0];
    high[measure.ordinal()] = span[1];
  }

  private double threshold() {
    return filmShare - Condition.TOLERANCE;
  }

  private static boolean is(double[] m, Measure measure) {
    return m[measure.ordinal()] == 1;
  }
}
