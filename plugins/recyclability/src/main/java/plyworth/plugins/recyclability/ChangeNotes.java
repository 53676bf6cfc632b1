package plyworth.plugins.recyclability;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What would have to change for a better verdict, as notes. */
record ChangeNotes(Structure structure, Case scored, Judge judge, ScoringContext context) {

  /** Shares that grades, labels and guides ask for. */
  private static final double[] STEPS = {0.70, 0.80, 0.90, 0.95};

  /** Share of a second material up to which a laminate counts as one material. */
  private static final double ONE_MATERIAL = 0.05;

  /** Density of the polyethylene that a barrier layer replaces, g/cm³: low-density resin. */
  private static final double POLYETHYLENE = 0.92;

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    boolean paper = scored.of(Measure.PAPER_LEADS) == 1;
    boolean plastic = scored.of(Measure.PLASTIC_LEADS) == 1;
    if (paper || plastic) {
      addNextStep(paper ? "paper" : "film", notes);
    }
    if (paper) {
      double fibre = scored.composition().of(Family.FIBRE);
      notes.add(note("change.one-material", InverseDesign.targetFor(fibre, ONE_MATERIAL), fibre));
    }
    if (plastic && scored.has(Measure.EVOH)) {
      addBarrier(notes);
    }
    return notes;
  }

  private void addNextStep(String kind, List<Note> notes) {
    double total = scored.composition().total();
    double share = scored.of(Measure.TARGET);
    double target = share * total;
    double rest = total - target;
    for (double step : STEPS) {
      if (share < step - Condition.TOLERANCE) {
        notes.add(
            note(
                "change." + kind,
                100 * step,
                InverseDesign.targetFor(rest, step),
                target,
                InverseDesign.restFor(target, step),
                rest));
      }
    }
  }

  private void addBarrier(List<Note> notes) {
    double gauge = 0;
    double grammage = 0;
    for (Layer layer : structure.layers()) {
      if (context.material(layer).figure(Family.EVOH.property(), Double.NaN).typical() == 1) {
        gauge += context.gaugeUm(layer);
        grammage += context.grammage(layer);
      }
    }
    if (gauge > 0) {
      double without = scored.composition().total() - grammage + gauge * POLYETHYLENE;
      double most =
          InverseDesign.barrierGaugeUm(
              judge.proxy().tolerated(), without, grammage / gauge, POLYETHYLENE);
      notes.add(note("change.barrier", 100 * judge.proxy().tolerated(), most, gauge));
    }
  }

  private static Note note(String key, Object... arguments) {
    return new Note(Text.of(key, arguments), Text.of("change.basis"));
  }
}
