package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** The laboratory tests that settle the figures, beside what is computed for each. */
final class LaboratoryTests {

  private final List<List<Object>> rows = new ArrayList<>();

  private LaboratoryTests() {}

  static Section of(PackBarrier barrier, Handling handling) {
    LaboratoryTests tests = new LaboratoryTests();
    tests.row("oxygen-sheet", barrier.otr(), Permeant.OXYGEN.rateUnit());
    tests.row("oxygen-pack", barrier.packOtr(), "cm3/(pack.day)");
    tests.row("water-sheet", barrier.wvtr(), Permeant.WATER.rateUnit());
    tests.row("water-pack-dry", barrier.packWvtr(), "mg/(pack.day)");
    barrier
        .path(Permeant.WATER)
        .ifPresent(
            path -> tests.row("water-pack", path.mechanism().perDay(path.total()), "mg/day"));
    barrier
        .alcohol()
        .ifPresent(
            path -> tests.row("alcohol-pack", path.mechanism().perDay(path.total()), "mg/day"));
    tests.flexing(handling);
    for (String test : List.of("pinholes", "leaks", "seal-strength", "isotherm")) {
      tests.row(test, Double.NaN, "");
    }
    return tests.table();
  }

  private void row(String test, double computed, String unit) {
    row(test, computed, unit, "test." + test + ".at");
  }

  private void row(String test, double computed, String unit, String conditions) {
    rows.add(List.of("test." + test, computed, unit, conditions, "test." + test + ".by"));
  }

  /** The strokes that stand for how the brief handles its packs. */
  private void flexing(Handling handling) {
    String condition = "test.flexing.at." + handling.name().toLowerCase(Locale.ROOT);
    row("flexing", Double.NaN, "", condition);
  }

  private Section table() {
    List<Text> columns =
        List.of(
            Text.of("column.settles"),
            Text.of("column.computed"),
            Text.of("column.unit"),
            Text.of("column.conditions"),
            Text.of("column.standards"));
    return new Table(Text.of("section.tests"), columns, rows, Text.of("basis.tests"));
  }
}
