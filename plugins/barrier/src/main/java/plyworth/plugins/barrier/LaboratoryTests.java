package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** The laboratory tests that settle the figures, beside what is computed for each. */
final class LaboratoryTests {

  private final List<List<Object>> rows = new ArrayList<>();

  private LaboratoryTests() {}

  static Section of(PackBarrier barrier) {
    LaboratoryTests tests = new LaboratoryTests();
    tests.row("oxygen-sheet", barrier.otr(), Permeant.OXYGEN.rateUnit());
    barrier
        .path(Permeant.OXYGEN)
        .ifPresent(path -> tests.row("oxygen-pack", path.total(), "cm3/(day.bar)"));
    tests.row("water-sheet", barrier.wvtr(), Permeant.WATER.rateUnit());
    barrier
        .path(Permeant.WATER)
        .ifPresent(
            path -> tests.row("water-pack", path.mechanism().perDay(path.total()), "mg/day"));
    barrier
        .alcohol()
        .ifPresent(
            path -> tests.row("alcohol-pack", path.mechanism().perDay(path.total()), "mg/day"));
    for (String test : List.of("flexing", "pinholes", "leaks", "seal-strength", "isotherm")) {
      tests.row(test, Double.NaN, "");
    }
    return tests.table();
  }

  private void row(String test, double computed, String unit) {
    rows.add(
        List.of(
            Words.of("test." + test),
            computed,
            unit,
            Words.of("test." + test + ".at"),
            Words.of("test." + test + ".by")));
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
