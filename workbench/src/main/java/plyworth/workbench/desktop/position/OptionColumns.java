package plyworth.workbench.desktop.position;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plyworth.shared.material.Material;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.FlowColumns;
import plyworth.workbench.chart.FlowDrawing;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.engine.graph.OptionFlows;

/**
 * The candidate graph of a study as columns to draw and as a table.
 *
 * @param figures what was counted
 * @param groups the options as they are shown
 * @param byRanked whether the ribbons show the ranked candidates rather than all
 */
record OptionColumns(FlowFigures figures, List<List<OptionGroups.Group>> groups, boolean byRanked) {

  /** Most options that a tooltip names. */
  private static final int NAMED = 12;

  static OptionColumns of(FlowFigures figures, boolean byRanked) {
    boolean known = figures.ranked().isPresent();
    return new OptionColumns(
        figures, OptionGroups.of(figures.offer().study().positions()), byRanked && known);
  }

  private Study study() {
    return figures.offer().study();
  }

  private OptionFlows shown() {
    return byRanked ? figures.ranked().orElseThrow() : figures.offer().flows();
  }

  private Optional<OptionFlows> chosen() {
    return byRanked ? figures.chosenRanked() : figures.chosen();
  }

  /** The box of what is selected; empty for nothing. */
  Optional<FlowDrawing.At> selected() {
    return figures
        .choice()
        .flatMap(
            choice ->
                IntStream.range(0, groups.get(choice.position()).size())
                    .filter(b -> group(choice.position(), b).set().equals(choice.options()))
                    .mapToObj(b -> new FlowDrawing.At(choice.position(), b))
                    .findFirst());
  }

  /** What a box stands for. */
  FlowFigures.Choice choice(FlowDrawing.At at) {
    return new FlowFigures.Choice(at.column(), group(at.column(), at.box()).set());
  }

  private OptionGroups.Group group(int position, int box) {
    return groups.get(position).get(box);
  }

  /** The columns to draw. */
  FlowColumns columns() {
    List<FlowColumns.Column> columns = new ArrayList<>();
    for (int p = 0; p < groups.size(); p++) {
      int position = p;
      String title = p + 1 + "  " + study().positions().get(p).title();
      columns.add(
          new FlowColumns.Column(
              title, groups.get(p).stream().map(g -> box(position, g)).toList()));
    }
    return new FlowColumns(columns, ribbons(), shown().candidates());
  }

  private FlowColumns.Box box(int position, OptionGroups.Group group) {
    long through = through(shown(), position, group);
    return new FlowColumns.Box(
        group.label(), OptionWords.count(through), family(position, group), through);
  }

  private String family(int position, OptionGroups.Group group) {
    Option option = study().positions().get(position).options().get(group.options().get(0));
    return option.layers().stream()
        .findFirst()
        .flatMap(layer -> study().materialsAtHand().find(layer.material()))
        .map(Material::family)
        .orElse("");
  }

  private static long through(OptionFlows flows, int position, OptionGroups.Group group) {
    return sum(group, o -> flows.through(position, o));
  }

  private static long sum(OptionGroups.Group group, ToLongFunction<Integer> each) {
    return group.options().stream().mapToLong(each).sum();
  }

  private static long between(
      OptionFlows flows, int position, OptionGroups.Group from, OptionGroups.Group to) {
    return sum(from, o -> sum(to, n -> flows.between(position, o, n)));
  }

  private List<FlowColumns.Ribbon> ribbons() {
    List<FlowColumns.Ribbon> ribbons = new ArrayList<>();
    for (int p = 0; p + 1 < groups.size(); p++) {
      for (int from = 0; from < groups.get(p).size(); from++) {
        for (int to = 0; to < groups.get(p + 1).size(); to++) {
          long all = between(shown(), p, group(p, from), group(p + 1, to));
          if (all > 0) {
            ribbons.add(new FlowColumns.Ribbon(p, from, to, all, chosen(p, from, to, all)));
          }
        }
      }
    }
    return ribbons;
  }

  private long chosen(int position, int from, int to, long all) {
    return chosen()
        .map(c -> between(c, position, group(position, from), group(position + 1, to)))
        .orElse(all);
  }

  /** The same as a table: a row for every box, and where its candidates go on to. */
  ChartTable table() {
    List<ChartTable.Column> columns =
        List.of(
            ChartTable.Column.words(Words.of("positions.position")),
            ChartTable.Column.words(Words.of("positions.option")),
            ChartTable.Column.words(Words.of("flows.next")),
            ChartTable.Column.figures(Words.of("positions.count")),
            ChartTable.Column.figures(Words.of("positions.ranked")),
            ChartTable.Column.figures(Words.of("flows.through")));
    return new ChartTable(columns, rows().stream().map(this::cells).toList());
  }

  /** A line of the table: a box alone where {@code to} is negative, else a ribbon from it. */
  private record Row(FlowDrawing.At from, int to) {}

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (int p = 0; p < groups.size(); p++) {
      for (int from = 0; from < groups.get(p).size(); from++) {
        FlowDrawing.At at = new FlowDrawing.At(p, from);
        rows.add(new Row(at, -1));
        for (int to = 0; p + 1 < groups.size() && to < groups.get(p + 1).size(); to++) {
          if (between(figures.offer().flows(), p, group(p, from), group(p + 1, to)) > 0) {
            rows.add(new Row(at, to));
          }
        }
      }
    }
    return rows;
  }

  /** Number of rows of the table. */
  int rowCount() {
    return rows().size();
  }

  /** The box that a row of the table is about. */
  FlowDrawing.At at(int row) {
    return rows().get(row).from();
  }

  /** The row of the table that a box has for itself. */
  int row(FlowDrawing.At at) {
    return rows().indexOf(new Row(at, -1));
  }

  private List<String> cells(Row row) {
    int p = row.from().column();
    OptionGroups.Group from = group(p, row.from().box());
    Optional<OptionGroups.Group> to =
        row.to() < 0 ? Optional.empty() : Optional.of(group(p + 1, row.to()));
    return List.of(
        p + 1 + "  " + study().positions().get(p).title(),
        from.label(),
        to.map(OptionGroups.Group::label).orElse(""),
        OptionWords.count(count(figures.offer().flows(), p, from, to)),
        figures.ranked().map(f -> OptionWords.count(count(f, p, from, to))).orElse("–"),
        figures.chosen().map(f -> OptionWords.count(count(f, p, from, to))).orElse("–"));
  }

  private static long count(
      OptionFlows flows, int position, OptionGroups.Group from, Optional<OptionGroups.Group> to) {
    return to.map(t -> between(flows, position, from, t))
        .orElseGet(() -> through(flows, position, from));
  }

  /** What a box holds and how many candidates use it, for a tooltip. */
  String tip(FlowDrawing.At at) {
    OptionGroups.Group group = group(at.column(), at.box());
    Position position = study().positions().get(at.column());
    String named =
        group.options().stream()
            .limit(NAMED)
            .map(o -> Html.escaped(OptionWords.full(position.options().get(o))))
            .collect(Collectors.joining("<br>"));
    String more = group.options().size() > NAMED ? "<br>…" : "";
    return "<html><b>" + named + more + "</b><br>" + said(at.column(), group, Optional.empty());
  }

  /** From where to where a ribbon runs and with how many candidates, for a tooltip. */
  String tip(FlowColumns.Ribbon ribbon) {
    OptionGroups.Group from = group(ribbon.column(), ribbon.from());
    OptionGroups.Group to = group(ribbon.column() + 1, ribbon.to());
    String head = Html.escaped(Words.of("flows.from-to", from.label(), to.label()));
    return "<html><b>" + head + "</b><br>" + said(ribbon.column(), from, Optional.of(to));
  }

  private String said(int position, OptionGroups.Group from, Optional<OptionGroups.Group> to) {
    long all = count(figures.offer().flows(), position, from, to);
    return Html.escaped(
        figures
            .ranked()
            .map(f -> Words.of("flows.counted", all, count(f, position, from, to)))
            .orElseGet(() -> Words.of("flows.unranked", all)));
  }

  /** What is selected, in words; empty for nothing. */
  String said() {
    return selected()
        .map(
            at -> {
              OptionGroups.Group group = group(at.column(), at.box());
              return Words.of(
                  "flows.selected",
                  study().positions().get(at.column()).title(),
                  group.label(),
                  said(at.column(), group, Optional.empty()));
            })
        .orElse("");
  }
}
