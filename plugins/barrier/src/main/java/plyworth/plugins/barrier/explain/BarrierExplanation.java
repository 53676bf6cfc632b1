package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** The breakdown behind the figures of one structure. */
public final class BarrierExplanation {

  private BarrierExplanation() {}

  /**
   * The sections that a structure asks for, the verdict first; those without a subject are left
   * out.
   */
  public static Explanation of(BarrierModel model, Structure structure) {
    PackBarrier barrier = PackBarrier.of(model, structure);
    List<Section> sections = new ArrayList<>();
    sections.add(verdict(barrier));
    sections.addAll(CalibrationSections.of(model));
    for (Permeant permeant : barrier.permeants()) {
      LayerSections layers = new LayerSections(model, structure, permeant);
      sections.add(layers.table());
      sections.add(layers.bars());
    }
    sections.addAll(HumiditySection.of(model, structure));
    sections.addAll(PinholeSection.of(model, structure));
    FormedPack pack = new FormedPack(model, structure);
    sections.addAll(PackSections.of(model, barrier, pack));
    if (barrier.demand().applies()) {
      sections.add(ClimateSection.of(model.context().brief().climate()));
      ProtectionSection.of(model, barrier, pack).ifPresent(sections::add);
      sections.addAll(GainCurves.of(barrier, pack));
      sections.addAll(StrengthSections.of(barrier, pack));
      sections.addAll(StartUpSections.of(model, structure, barrier));
      sections.add(AcceleratedSection.of(model, structure));
    }
    sections.add(LaboratoryTests.of(barrier, model.context().brief().handling()));
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
}
