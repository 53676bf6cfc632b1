package plyworth.plugins.cost;

import java.util.List;
import java.util.Optional;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.scoring.Outcome.DataMissing;
import plyworth.shared.structure.Layer;

/** Finds what is missing when an order cannot be priced. */
final class MissingData {

  private static final List<PassFigure> EVERY_PASS =
      List.of(
          PassFigure.SPEED,
          PassFigure.SETUP_TIME,
          PassFigure.SETUP_WASTE,
          PassFigure.RUNNING_WASTE,
          PassFigure.EFFICIENCY,
          PassFigure.HOUR_RATE);

  private MissingData() {}

  /** The first figure that a bill lacks; empty when it lacks none. */
  static Optional<DataMissing> of(Bill bill, Tariff tariff) {
    for (Bill.MaterialItem item : bill.materials()) {
      Optional<DataMissing> missing = of(item.layer(), tariff);
      if (missing.isPresent()) {
        return missing;
      }
    }
    for (Bill.PassItem item : bill.passes()) {
      Optional<DataMissing> missing = of(item, tariff);
      if (missing.isPresent()) {
        return missing;
      }
    }
    return Optional.empty();
  }

  private static Optional<DataMissing> of(Layer layer, Tariff tariff) {
    String material = tariff.context().material(layer).id();
    if (Double.isNaN(tariff.price(layer))) {
      return Optional.of(new DataMissing(material, Tariff.PRICE));
    }
    if (Double.isNaN(tariff.solids(layer))) {
      boolean own = tariff.context().material(layer).property(Tariff.SUPPLIED_SOLIDS).isPresent();
      return Optional.of(
          own
              ? new DataMissing(material, Tariff.SUPPLIED_SOLIDS)
              : new DataMissing("@" + layer.process(), PassFigure.INK_SOLIDS.id()));
    }
    return Double.isNaN(tariff.edgeFactor(layer))
        ? Optional.of(new DataMissing("@" + layer.process(), PassFigure.EDGE_FACTOR.id()))
        : Optional.empty();
  }

  private static Optional<DataMissing> of(Bill.PassItem item, Tariff tariff) {
    Process process = item.process();
    for (PassFigure figure : EVERY_PASS) {
      if (Double.isNaN(tariff.figure(process, figure))) {
        return Optional.of(new DataMissing("@" + process.id(), figure.id()));
      }
    }
    if (process.role() != ProcessRole.PRINT || !Double.isNaN(item.tooling())) {
      return Optional.empty();
    }
    boolean price = Double.isNaN(tariff.figure(process, PassFigure.TOOLING_PER_COLOUR));
    PassFigure lacking = price ? PassFigure.TOOLING_PER_COLOUR : PassFigure.TOOL_LIFE;
    return Optional.of(new DataMissing("@" + process.id(), lacking.id()));
  }
}
