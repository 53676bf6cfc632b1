package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** The breakdown behind the figures of one structure. */
final class BarrierExplanation {

  private BarrierExplanation() {}

  static Explanation of(BarrierModel model, Structure structure) {
    PackBarrier barrier = PackBarrier.of(model, structure);
    List<Section> sections = new ArrayList<>();
    sections.add(verdict(barrier));
    for (Permeant permeant : barrier.permeants()) {
      LayerSections layers = new LayerSections(model, structure, permeant);
      sections.add(layers.table());
      sections.add(layers.bars());
    }
    sections.addAll(PinholeSection.of(model, structure));
    PackConductance pack = PackBarrier.conductance(model, structure);
    sections.addAll(PackSections.of(model, barrier, pack));
    sections.addAll(GainCurves.of(barrier, pack));
    sections.addAll(tests(barrier));
    return new Explanation(sections);
  }

  /** What ends the shelf life, in one sentence. */
  private static Section verdict(PackBarrier barrier) {
    Text basis = Text.of("basis.verdict");
    if (!barrier.demand().applies()) {
      return new Note(Text.of("no-limit"), basis);
    }
    if (Double.isNaN(barrier.days())) {
      return new Note(Text.of("verdict.unknown"), basis);
    }
    return new Note(
        barrier
            .limiting()
            .map(p -> Text.of("verdict." + p.mechanism().word(), p.days(), barrier.demand().days()))
            .orElse(Text.of("finding.never-limiting")),
        basis);
  }

  /** The laboratory tests that settle the figures. */
  private static List<Section> tests(PackBarrier barrier) {
    List<Section> notes = new ArrayList<>();
    List<String> tests = new ArrayList<>(List.of("oxygen", "water"));
    barrier.path(Permeant.ALCOHOL).ifPresent(p -> tests.add("alcohol"));
    tests.addAll(List.of("flex", "foil", "seals", "isotherm"));
    for (String test : tests) {
      notes.add(new Note(Text.of("test." + test), Text.of("basis.tests")));
    }
    return notes;
  }
}
