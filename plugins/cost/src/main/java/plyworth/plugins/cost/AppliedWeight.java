package plyworth.plugins.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.material.Property;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What a process puts down should be a weight it can put down. */
final class AppliedWeight {

  private static final String LEAST = "coating-min";
  private static final String MOST = "coating-max";

  private AppliedWeight() {}

  /** A warning for every pass whose applied weight lies outside the widest range of its process. */
  static List<Finding> findings(Structure structure, Bill bill, Tariff tariff) {
    List<Finding> findings = new ArrayList<>();
    for (Bill.PassItem pass : bill.passes()) {
      double applied = 0;
      for (int i : pass.layers()) {
        Layer layer = structure.layers().get(i);
        boolean here = layer.process().equals(pass.process().id());
        applied += here ? tariff.context().grammage(layer) : 0;
      }
      finding(pass.process(), applied).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> finding(Process process, double applied) {
    double least = process.figure(LEAST).low();
    double most = process.figure(MOST).high();
    if (applied < least) {
      return Optional.of(warning(process, LEAST, "applied-weight-low", applied, least));
    }
    if (applied > most) {
      return Optional.of(warning(process, MOST, "applied-weight-high", applied, most));
    }
    return Optional.empty();
  }

  private static Finding warning(
      Process process, String figure, String rule, double applied, double limit) {
    Property property = process.figures().get(figure);
    return new Finding(
        Finding.Level.WARNS,
        rule,
        Text.of("finding." + rule, process.name(), applied, limit),
        property.points().get(0).source());
  }
}
