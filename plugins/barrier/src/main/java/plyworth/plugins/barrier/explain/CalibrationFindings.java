package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.Comparison;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.Text;

/** What is striking about the measurements of today's pack. */
final class CalibrationFindings {

  private CalibrationFindings() {}

  static List<Finding> of(BarrierModel model) {
    List<Finding> findings = new ArrayList<>();
    for (Comparison comparison : model.calibration().comparisons()) {
      if (comparison.striking() && comparison.measurement().note().isBlank()) {
        String key = comparison.formed() ? "finding.ratio.formed" : "finding.ratio.flat";
        findings.add(warning("measured-otherwise", key, comparison));
      }
      if (comparison.formed() && comparison.evidence().isEmpty()) {
        boolean unknown = Double.isNaN(comparison.predicted());
        String key = unknown ? "finding.not-predicted" : "finding.unexplained";
        findings.add(warning("measurement-unused", key, comparison));
      }
    }
    return List.copyOf(findings);
  }

  private static Finding warning(String rule, String key, Comparison comparison) {
    Text text =
        Text.of(
            key,
            comparison.measurement().figure(),
            comparison.measurement().value(),
            comparison.predicted(),
            comparison.ratio());
    return new Finding(Level.WARNS, rule, text, comparison.measurement().method());
  }
}
