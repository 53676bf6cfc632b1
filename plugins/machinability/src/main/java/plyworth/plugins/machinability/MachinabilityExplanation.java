package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** The breakdown behind the figures of one structure. */
final class MachinabilityExplanation {

  private static final List<String> NOTES =
      List.of(
          "note.seal-strength",
          "note.hot-tack",
          "note.leak",
          "note.stiffness",
          "note.ageing",
          "note.alcohol",
          "note.codes");

  private final MachinabilityScorer scorer;
  private final Structure structure;
  private final LaminateState state;
  private final Verdict verdict;

  MachinabilityExplanation(MachinabilityScorer scorer, Structure structure) {
    this.scorer = scorer;
    this.structure = structure;
    this.state = scorer.state(structure);
    this.verdict = scorer.verdict(state);
  }

  Explanation whole() {
    List<Section> sections = new ArrayList<>();
    sections.add(LayerTable.of(scorer, structure));
    sections.add(stiffness());
    sections.addAll(new SealExplanation(scorer, structure, state, verdict).sections());
    if (!Double.isNaN(verdict.packs())) {
      sections.add(cycle());
    }
    if (!scorer.agents().isEmpty()) {
      sections.add(attack());
    }
    NOTES.forEach(key -> sections.add(new Note(Text.of(key), Text.of(key + ".basis"))));
    return new Explanation(sections);
  }

  private Section stiffness() {
    Beam beam = Beam.of(scorer.layers(structure));
    MachineBand band = scorer.band();
    List<List<Object>> rows =
        List.of(
            row("tensile stiffness EA", beam.tensile(), "N/mm"),
            row("neutral axis from the outer face", 1000 * beam.neutralMm(), "um"),
            row("bending stiffness", beam.bending(), "N.mm"),
            row("two-point force, 10 mm, 15°, 38 mm", 1000 * beam.twoPointForce(10, 15, 38), "mN"),
            row("least for the machine", band.stiffnessLow(), "N.mm"),
            row("most for the machine", band.stiffnessHigh(), "N.mm"));
    return new Table(
        Text.of("explain.stiffness"),
        List.of(Text.of("column.quantity"), Text.of("column.figure"), Text.of("column.unit")),
        rows,
        Text.of("explain.stiffness.basis"));
  }

  private Section cycle() {
    FillingCycle cycle = FillingCycle.of(scorer.settings(), verdict.dwellS());
    return new Bars(
        Text.of("explain.cycle", verdict.packs(), cycle.unlimited(), cycle.fillLimit()),
        "s",
        List.of("feed", "jaws shut", "jaw travel and cooling", "shortest cycle for filling"),
        List.of(cycle.feedS(), cycle.heldS(), cycle.otherS(), 60 / cycle.fillLimit()),
        Text.of("explain.cycle.basis", scorer.settings().machine().dwellFactor()));
  }

  private Section attack() {
    List<List<Object>> rows = new ArrayList<>();
    for (Findings.Fired fired : Findings.fired(scorer, structure)) {
      AttackRule rule = fired.rule();
      rows.add(
          List.of(
              LayerNotation.write(fired.layer()),
              Choice.plain(rule.level()),
              rule.reason(),
              rule.source()));
    }
    return new Table(
        Text.of("explain.attack", scorer.attack().rules().size(), rows.size()),
        List.of(
            Text.of("column.layer"),
            Text.of("column.verdict"),
            Text.of("column.reason"),
            Text.of("column.source")),
        rows,
        Text.of("explain.attack.basis"));
  }

  private static List<Object> row(String quantity, double figure, String unit) {
    return List.of(quantity, figure, unit);
  }
}
