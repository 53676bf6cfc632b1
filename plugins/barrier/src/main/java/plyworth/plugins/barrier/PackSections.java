package plyworth.plugins.barrier;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** What the formed pack lets through, and how long the product keeps in it. */
final class PackSections {

  private PackSections() {}

  static List<Section> of(BarrierModel model, PackBarrier barrier, PackConductance pack) {
    if (!barrier.demand().applies()) {
      return List.of();
    }
    return List.of(climate(model), terms(barrier), limits(barrier, pack), margins(barrier));
  }

  private static Section climate(BarrierModel model) {
    StorageClimate climate = model.climate();
    List<Object> row =
        List.of(
            climate.celsius(),
            100 * climate.outside(),
            climate.inside(),
            100 * climate.within(),
            climate.saturatedPa(),
            1e4 * model.pack().faceM2(),
            model.pack().edgeRatio());
    List<Text> columns =
        List.of(
            Text.of("column.temperature"),
            Text.of("column.outside"),
            Text.of("column.inside"),
            Text.of("column.within"),
            Text.of("column.saturated"),
            Text.of("column.face-area"),
            Text.of("column.edge-ratio"));
    return new Table(Text.of("section.climate"), columns, List.of(row), Text.of("basis.climate"));
  }

  private static Section terms(PackBarrier barrier) {
    List<List<Object>> rows = new ArrayList<>();
    for (PackBarrier.Path path : barrier.paths()) {
      double face = path.mechanism().perDay(path.terms().face());
      double edge = path.mechanism().perDay(path.terms().edge());
      rows.add(
          List.of(
              path.mechanism().word(),
              path.mechanism().permeant() == Permeant.OXYGEN ? "cm3/day" : "mg/day",
              face,
              edge,
              face + edge));
    }
    List<Text> columns =
        List.of(
            Text.of("column.mechanism"),
            Text.of("column.unit"),
            Text.of("column.face"),
            Text.of("column.edge"),
            Text.of("column.total"));
    return new Table(Text.of("section.pack"), columns, rows, Text.of("basis.pack"));
  }

  private static Section limits(PackBarrier barrier, PackConductance pack) {
    List<List<Object>> rows = new ArrayList<>();
    for (PackBarrier.Path path : barrier.paths()) {
      Course gain = path.mechanism().balance().course(pack, barrier.demand().days());
      rows.add(
          List.of(
              path.mechanism().word(),
              gain.unit(),
              gain.after(barrier.demand().days()),
              gain.limit(),
              orNever(path.life()),
              orNever(times(path.life(), barrier.demand().days()))));
    }
    List<Text> columns =
        List.of(
            Text.of("column.mechanism"),
            Text.of("column.unit"),
            Text.of("column.gain"),
            Text.of("column.limit"),
            Text.of("column.days"),
            Text.of("column.margin"));
    return new Table(
        Text.of("section.limits", barrier.demand().days()), columns, rows, Text.of("basis.limits"));
  }

  private static Section margins(PackBarrier barrier) {
    return new Bars(
        Text.of("section.margins"),
        "",
        barrier.paths().stream().map(p -> p.mechanism().word()).toList(),
        barrier.paths().stream().map(p -> capped(barrier, p)).toList(),
        Text.of("basis.margins"));
  }

  private static Life times(Life life, double days) {
    return new Life(life.days() / days, life.reached());
  }

  private static Object orNever(Life life) {
    if (life.reached() || Double.isNaN(life.days())) {
      return life.days();
    }
    return Double.isInfinite(life.days())
        ? Words.of("word.never")
        : new MessageFormat(Words.of("word.over"), Locale.ENGLISH)
            .format(new Object[] {Math.round(life.days())});
  }

  private static double capped(PackBarrier barrier, PackBarrier.Path path) {
    return Math.min(Demand.CAP, path.days() / barrier.demand().days());
  }
}
