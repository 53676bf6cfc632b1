package plyworth.plugins.recyclability;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What would have to change for a better verdict. */
record Changes(Structure structure, Case scored, Judge judge, ScoringContext context) {

  /** Shares that grades, labels and guides ask for. */
  private static final double[] STEPS = {0.70, 0.80, 0.90, 0.95};

  /** Share of a second material up to which a laminate counts as one material. */
  private static final double ONE_MATERIAL = 0.05;

  /** Density of the polyethylene that a barrier layer replaces, g/cm³: low-density resin. */
  private static final double POLYETHYLENE = 0.92;

  /** A table of shares, then remarks. */
  List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    boolean paper = scored.of(Measure.PAPER_LEADS) == 1;
    boolean plastic = scored.of(Measure.PLASTIC_LEADS) == 1;
    if (paper || plastic) {
      addDisqualifiers(paper ? judge.proxy().fibre() : judge.proxy().film(), sections);
      sections.add(steps(paper ? "change.paper" : "change.film"));
    }
    if (paper) {
      double fibre = scored.composition().of(Family.FIBRE);
      sections.add(
          note("change.one-material", InverseDesign.targetFor(fibre, ONE_MATERIAL), fibre));
    }
    if (plastic && scored.has(Measure.EVOH)) {
      addBarrier(sections);
    }
    return sections;
  }

  private void addDisqualifiers(RuleSet out, List<Section> sections) {
    String reasons =
        out.firing(scored.figures()).stream().map(Rule::verdict).collect(Collectors.joining("; "));
    if (!reasons.isEmpty()) {
      sections.add(note("change.first", reasons));
    }
  }

  private Table steps(String key) {
    double total = scored.composition().total();
    double share = scored.of(Measure.TARGET);
    double target = share * total;
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of(100 * share, target, total - target));
    for (double step : STEPS) {
      rows.add(
          List.of(
              100 * step,
              InverseDesign.targetFor(total - target, step),
              InverseDesign.restFor(target, step)));
    }
    return new Table(
        Text.of(key),
        List.of(
            Text.of("column.wanted"), Text.of("column.target-mass"), Text.of("column.rest-mass")),
        rows,
        Text.of("change.basis"));
  }

  private void addBarrier(List<Section> sections) {
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
      sections.add(note("change.barrier", 100 * judge.proxy().tolerated(), most, gauge));
    }
  }

  private static Note note(String key, Object... arguments) {
    return new Note(Text.of(key, arguments), Text.of("change.basis"));
  }
}
