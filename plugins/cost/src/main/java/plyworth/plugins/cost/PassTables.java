package plyworth.plugins.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** The passes of a bill as tables. */
final class PassTables {

  private static final List<PassFigure> SHOWN =
      List.of(
          PassFigure.SPEED,
          PassFigure.SPEED_PAPER,
          PassFigure.SETUP_TIME,
          PassFigure.SETUP_WASTE,
          PassFigure.RUNNING_WASTE,
          PassFigure.EFFICIENCY,
          PassFigure.HOUR_RATE,
          PassFigure.EDGE_FACTOR,
          PassFigure.TOOLING_PER_COLOUR,
          PassFigure.TOOL_LIFE);

  private PassTables() {}

  /** Area, waste, hours and cost of every pass. */
  static Table passes(Bill bill) {
    List<List<Object>> rows = new ArrayList<>();
    for (Bill.PassItem pass : bill.passes()) {
      double input = pass.inputM2();
      rows.add(
          List.of(
              pass.process().name(),
              input,
              pass.outputM2(),
              input - pass.outputM2(),
              pass.hours(),
              pass.machineCost(),
              pass.tooling()));
    }
    return new Table(
        Text.of("passes.title"),
        columns("pass", "area-in", "area-out", "waste", "hours", "machine-cost", "tooling"),
        rows,
        Text.of("passes.basis"));
  }

  /** The figures of every process and where they come from. */
  static Table rates(Bill bill) {
    List<List<Object>> rows = new ArrayList<>();
    bill.passes().stream()
        .map(Bill.PassItem::process)
        .distinct()
        .forEach(
            process -> {
              for (PassFigure figure : SHOWN) {
                Provenance provenance = Provenance.ofFigure(process, figure);
                if (provenance.range().known()) {
                  rows.add(
                      List.of(
                          process.name(),
                          figure.id(),
                          provenance.range().low(),
                          provenance.range().typical(),
                          provenance.range().high(),
                          provenance.unit(),
                          Choice.plain(provenance.kind()),
                          provenance.source()));
                }
              }
            });
    return new Table(
        Text.of("rates.title"),
        columns("pass", "figure", "low", "typical", "high", "unit", "kind", "source"),
        rows,
        Text.of("rates.basis"));
  }

  /** Column headings by key. */
  static List<Text> columns(String... keys) {
    return Stream.of(keys).map(key -> Text.of("column." + key)).toList();
  }
}
