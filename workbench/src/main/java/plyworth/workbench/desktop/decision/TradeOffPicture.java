package plyworth.workbench.desktop.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.FigureClasses;
import plyworth.workbench.chart.FrontMemory;
import plyworth.workbench.chart.Html;
import plyworth.workbench.chart.Plotted;
import plyworth.workbench.chart.TradeOff;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Valuation;

/**
 * A trade-off plot in words, ready to be shown.
 *
 * @param plot what is drawn
 * @param structures the structure of each row of the table: today's, then the candidates
 * @param rows row of the table of each point of the plot
 * @param table the same as a table
 * @param note what is shown, and what is not
 */
record TradeOffPicture(
    TradeOff plot, List<Structure> structures, List<Integer> rows, ChartTable table, String note) {

  /** Makes the picture; takes its time where the front is large. */
  static TradeOffPicture of(
      Ranked ranked,
      BestList kinds,
      TradeOffChoice choice,
      FrontMemory fronts,
      BooleanSupplier cancelled) {
    int[] front = choice.front(ranked.ranking().model());
    return new Maker(ranked, choice, Plotted.of(ranked, kinds, front, fronts, cancelled)).picture();
  }

  /** The point of a structure; empty when it is not drawn. */
  OptionalInt pointOf(Structure structure) {
    return IntStream.range(0, rows.size())
        .filter(p -> structures.get(rows.get(p)).equals(structure))
        .findFirst();
  }

  private static final class Maker {

    private final Ranked ranked;
    private final TradeOffChoice choice;
    private final Plotted plotted;
    private final FigureClasses classes;
    private final List<Structure> structures = new ArrayList<>();
    private final List<Integer> rows = new ArrayList<>();
    private final List<TradeOff.Point> points = new ArrayList<>();
    private final List<List<String>> cells = new ArrayList<>();

    Maker(Ranked ranked, TradeOffChoice choice, Plotted plotted) {
      this.ranked = ranked;
      this.choice = choice;
      this.plotted = plotted;
      classes =
          FigureClasses.of(
              plotted.candidates().stream()
                  .mapToDouble(c -> marked() ? figure(c.valuation(), choice.marks()) : 0)
                  .toArray());
    }

    private boolean marked() {
      return choice.marks() != TradeOffChoice.NONE;
    }

    private BoundCriterion criterion(int place) {
      return ranked.ranking().model().criteria().get(place).criterion();
    }

    private static double figure(Valuation valuation, int place) {
      return valuation.parts().get(place).low();
    }

    TradeOffPicture picture() {
      Valuation todays = ranked.baseline().valuation();
      Optional<TradeOff.Point> today =
          place(Words.of("tradeoff.today"), ranked.baseline().structure(), todays, false);
      row(Words.of("tradeoff.today"), ranked.baseline().structure(), todays, "");
      for (Plotted.Candidate candidate : plotted.candidates()) {
        Structure structure = ranked.structure(candidate.path());
        String name =
            candidate.rank() > 0
                ? Integer.toString(candidate.rank())
                : Words.of(candidate.onFront() ? "tradeoff.of-front" : "tradeoff.of-kind");
        place(name, structure, candidate.valuation(), candidate.onFront())
            .ifPresent(
                point -> {
                  rows.add(structures.size());
                  points.add(point);
                });
        row(
            name,
            structure,
            candidate.valuation(),
            candidate.onFront() ? Words.of("tradeoff.on-front") : "");
      }
      return new TradeOffPicture(
          new TradeOff(
              axis(choice.x()),
              axis(choice.y()),
              marks(),
              marked() ? label(choice.marks()) : "",
              points,
              today,
              new TradeOff.Words(
                  Words.of("tradeoff.full"),
                  Words.of("tradeoff.hollow"),
                  Words.of("tradeoff.unknown"))),
          structures,
          rows,
          new ChartTable(columns(), cells),
          note());
    }

    private TradeOff.Axis axis(int place) {
      Criterion declared = criterion(place).criterion();
      return new TradeOff.Axis(
          label(place)
              + "  "
              + Words.of(
                  "tradeoff.better." + better(declared).name().toLowerCase(java.util.Locale.ROOT)),
          declared.classes().stream()
              .map(text -> CriterionWords.sentence(ranked, criterion(place), text))
              .toList(),
          better(declared));
    }

    private static TradeOff.Better better(Criterion declared) {
      return switch (declared.direction()) {
        case HIGHER -> TradeOff.Better.MORE;
        case LOWER -> TradeOff.Better.LESS;
        case BAND -> TradeOff.Better.BETWEEN;
      };
    }

    private String label(int place) {
      String unit = CriterionWords.unit(criterion(place));
      String title = CriterionWords.title(ranked, criterion(place));
      return unit.isEmpty() ? title : title + ", " + unit;
    }

    private List<String> marks() {
      if (!marked()) {
        return List.of("");
      }
      BoundCriterion criterion = criterion(choice.marks());
      if (!criterion.criterion().classes().isEmpty()) {
        return criterion.criterion().classes().stream()
            .map(text -> CriterionWords.sentence(ranked, criterion, text))
            .toList();
      }
      double[] bounds = classes.bounds();
      if (bounds.length == 0) {
        return List.of(Words.of("tradeoff.class.all"));
      }
      List<String> marks = new ArrayList<>();
      marks.add(Words.of("tradeoff.class.under", Digits.sensible(bounds[0])));
      for (int i = 1; i < bounds.length; i++) {
        marks.add(
            Words.of(
                "tradeoff.class.between",
                Digits.sensible(bounds[i - 1]),
                Digits.sensible(bounds[i])));
      }
      marks.add(Words.of("tradeoff.class.from", Digits.sensible(bounds[bounds.length - 1])));
      return marks;
    }

    private int mark(Valuation valuation) {
      if (!marked()) {
        return 0;
      }
      double figure = figure(valuation, choice.marks());
      return criterion(choice.marks()).criterion().classes().isEmpty() || Double.isNaN(figure)
          ? classes.of(figure)
          : (int) figure;
    }

    /** A point; empty where one of its figures is unknown. */
    private Optional<TradeOff.Point> place(
        String name, Structure structure, Valuation valuation, boolean front) {
      double x = figure(valuation, choice.x());
      double y = figure(valuation, choice.y());
      return Double.isFinite(x) && Double.isFinite(y)
          ? Optional.of(
              new TradeOff.Point(
                  name, tip(name, structure, valuation), x, y, mark(valuation), front))
          : Optional.empty();
    }

    private String tip(String name, Structure structure, Valuation valuation) {
      StringBuilder html = new StringBuilder("<html><body style='width:340px'><b>");
      html.append(Html.escaped(name)).append("</b>, ");
      html.append(Html.escaped(Words.of("tradeoff.value", written(valuation))));
      shown()
          .forEach(
              c ->
                  html.append("<br>")
                      .append(Html.escaped(CriterionWords.title(ranked, criterion(c))))
                      .append(": <b>")
                      .append(Html.escaped(withUnit(valuation, c)))
                      .append("</b>"));
      html.append("<br>").append(Html.escaped(Labels.brief(structure)));
      return html.append("</body></html>").toString();
    }

    private String withUnit(Valuation valuation, int place) {
      String unit = CriterionWords.unit(criterion(place));
      String figure = CriterionWords.figure(ranked, criterion(place), figure(valuation, place));
      return unit.isEmpty() ? figure : figure + " " + unit;
    }

    private static String written(Valuation valuation) {
      return String.format(java.util.Locale.ROOT, "%.3f", valuation.value());
    }

    /** The criteria shown, each once. */
    private Stream<Integer> shown() {
      return Stream.of(choice.x(), choice.y(), choice.marks())
          .filter(c -> c != TradeOffChoice.NONE)
          .distinct();
    }

    private List<ChartTable.Column> columns() {
      List<ChartTable.Column> columns = new ArrayList<>();
      columns.add(ChartTable.Column.figures(Words.of("table.rank")));
      columns.add(ChartTable.Column.figures(Words.of("table.value")));
      shown().forEach(c -> columns.add(ChartTable.Column.figures(label(c))));
      columns.add(ChartTable.Column.words(Words.of("tradeoff.front")));
      columns.add(ChartTable.Column.words(Words.of("table.structure")));
      return columns;
    }

    private void row(String name, Structure structure, Valuation valuation, String front) {
      structures.add(structure);
      List<String> row = new ArrayList<>(List.of(name, written(valuation)));
      shown()
          .forEach(c -> row.add(CriterionWords.figure(ranked, criterion(c), figure(valuation, c))));
      row.add(front);
      row.add(Labels.brief(structure));
      cells.add(row);
    }

    private String note() {
      long ranks = ranked.ranking().isCounted() ? ranked.ranking().counts().ranked() : 0;
      Plotted.Front front = plotted.front();
      String said =
          Words.of("tradeoff.note", plotted.best(), ranks, plotted.kinds())
              + " "
              + switch (front.reach()) {
                case ALL ->
                    Words.of(
                        choice.overWeighted() ? "tradeoff.front.weighted" : "tradeoff.front.axes",
                        front.members(),
                        front.plotted());
                case NO_COLUMN -> Words.of("tradeoff.front.no-column");
                case TOO_LARGE -> Words.of("tradeoff.front.too-large", Plotted.LARGEST_FRONT);
              };
      int left = plotted.candidates().size() - points.size();
      return left == 0 ? said : said + " " + Words.of("tradeoff.left-out", left);
    }
  }
}
