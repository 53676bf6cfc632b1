package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** The breakdown behind the figures of one print job. */
record Breakdown(PrintJob job, Contributions contributions) {

  private static final List<String> NOTES =
      List.of("wetting-test", "residual-test", "solvent-safety", "food-safety", "local-law");

  /** Tables first, then notes: what test settles what, and cautions. */
  Explanation explanation() {
    List<Section> sections = new ArrayList<>();
    if (job.layDowns().isEmpty()) {
      sections.add(note("unprinted"));
    } else {
      sections.add(layDown());
      sections.addAll(new EmissionBreakdown(job, contributions).sections());
      sections.addAll(new EnergyBreakdown(job, contributions).sections());
    }
    if (!job.surfaces().isEmpty()) {
      sections.add(gates());
    }
    NOTES.forEach(id -> sections.add(note(id)));
    return new Explanation(sections);
  }

  private Table layDown() {
    List<List<Object>> rows = new ArrayList<>();
    for (LayDown down : job.layDowns()) {
      MakeUp liquid = down.by().makeUp();
      rows.add(
          List.of(
              down.layer().material(),
              down.by().process().id(),
              liquid.solids(),
              down.dry(),
              down.wet(),
              down.water(),
              down.solvent()));
    }
    return table("lay-down", rows, "layer", "method", "solids", "dry", "wet", "water", "solvent");
  }

  private Table gates() {
    List<List<Object>> rows = new ArrayList<>();
    for (Printed printed : job.surfaces()) {
      double level = contributions.gates().level(printed);
      InkKind kind = contributions.processes().get(printed.ink().process()).kind();
      double required =
          printed.surface().needsWetting() ? printed.surface().required(kind) : Double.NaN;
      for (Gate gate : contributions.gates().of(printed)) {
        rows.add(
            List.of(
                printed.web().material(),
                printed.surface().position(printed.reverse(), printed.primed()),
                gate.id(),
                level,
                required,
                gate.verdict().plain(),
                gate.source()));
      }
    }
    return table(
        "gates", rows, "surface", "position", "gate", "level", "required", "verdict", "source");
  }

  static Table table(String id, List<List<Object>> rows, String... columns) {
    List<Text> headings =
        List.of(columns).stream().map(column -> Text.of("column." + column)).toList();
    return new Table(Text.of("section." + id), headings, rows, Text.of("section." + id + ".basis"));
  }

  private static Note note(String id) {
    return new Note(Text.of("note." + id), Text.of("note." + id + ".basis"));
  }
}
