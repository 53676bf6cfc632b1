package plyworth.plugins.cost;

import java.util.Comparator;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * Where a figure comes from.
 *
 * @param range low, typical, high
 * @param unit unit in plain spelling
 * @param kind kind of origin
 * @param source origin in words
 */
record Provenance(Range range, String unit, SourceKind kind, String source) {

  private static final Provenance NONE =
      new Provenance(Range.UNKNOWN, "", SourceKind.JUDGEMENT, "not known");

  /** The price of a layer's material, after the tabulated gauge that lies nearest. */
  static Provenance ofPrice(Layer layer, ScoringContext context) {
    double gauge = context.gaugeUm(layer);
    return context
        .material(layer)
        .property(Tariff.PRICE)
        .map(p -> of(p, p.at(gauge), nearest(p, gauge)))
        .orElse(NONE);
  }

  /** A figure of a process. */
  static Provenance ofFigure(Process process, PassFigure figure) {
    Property property = process.figures().get(figure.id());
    return property == null ? NONE : of(property, property.range(), property.points().get(0));
  }

  private static Provenance of(Property property, Range range, Sourced point) {
    return new Provenance(range, property.unit(), point.kind(), point.source());
  }

  private static Sourced nearest(Property property, double gauge) {
    return property.points().stream()
        .min(Comparator.comparingDouble(p -> Double.isNaN(p.at()) ? 0 : Math.abs(p.at() - gauge)))
        .orElseThrow();
  }
}
