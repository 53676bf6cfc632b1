package plyworth.plugins.recyclability;

import java.util.Map;
import plyworth.shared.data.Fields;

/**
 * Public fees of one scheme and year. Figures of different years are never mixed.
 *
 * @param id its name
 * @param title scheme and year
 * @param currency currency code
 * @param status final or illustrative
 * @param set id of the rule set whose deciding rule gives the category
 * @param rates fee per tonne of the whole laminate, by rule id
 * @param plastic fee per tonne of everything but foil, where the set has nothing to say; NaN when
 *     the scheme gives none
 * @param aluminium fee per tonne of foil in the same case
 * @param source where the fees were read
 * @param confidence how far they can be trusted
 */
record FeeTable(
    String id,
    String title,
    String currency,
    String status,
    String set,
    Map<String, Double> rates,
    double plastic,
    double aluminium,
    String source,
    Rule.Confidence confidence) {

  static FeeTable read(Fields fields) {
    return new FeeTable(
        fields.text("id"),
        fields.text("title"),
        fields.text("currency"),
        fields.text("status"),
        fields.text("set"),
        fields.map("rates", Fields::number),
        fields.numberOrUnknown("plastic"),
        fields.numberOrUnknown("aluminium"),
        fields.text("source"),
        fields.choice("confidence", Rule.Confidence.class));
  }

  /**
   * Fee per 1000 m²: grammage in g/m² is kg per 1000 m², times the rate per tonne over 1000.
   *
   * @return NaN when the scheme has no rate for it
   */
  double per1000m2(Composition composition, Verdict category) {
    if (category.inScope()) {
      double rate =
          category.rule().map(r -> rates.getOrDefault(r.id(), Double.NaN)).orElse(Double.NaN);
      return composition.total() * rate / 1000;
    }
    double foil = composition.of(Family.ALUMINIUM);
    return ((composition.total() - foil) * plastic + (foil > 0 ? foil * aluminium : 0)) / 1000;
  }
}
