package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.course.Course;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.pack.PackTerms;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** What the formed pack lets through, and how long the product keeps in it. */
final class PackSections {

  private PackSections() {}

  static List<Section> of(BarrierModel model, PackBarrier barrier, FormedPack pack) {
    if (!barrier.demand().applies()) {
      return List.of();
    }
    return List.of(
        climate(model),
        terms(barrier, pack),
        LeakSection.of(barrier, pack),
        limits(barrier, pack),
        margins(barrier));
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

  /** Way by way; the faces as a flat sheet, and what forming and handling add to them. */
  private static Section terms(PackBarrier barrier, FormedPack pack) {
    FormedPack flat = new FormedPack(pack.model().handled(Handling.FLAT), pack.structure());
    List<List<Object>> rows = new ArrayList<>();
    for (PackBarrier.Path path : barrier.paths()) {
      Mechanism mechanism = path.mechanism();
      PackTerms terms = path.terms();
      double sheet = flat.atStorage(mechanism.permeant()).face();
      rows.add(
          List.of(
              mechanism.word(),
              mechanism.unitPerDay(),
              mechanism.perDay(sheet),
              mechanism.perDay(terms.face() - sheet),
              mechanism.perDay(terms.edge()),
              mechanism.perDay(terms.leak()),
              mechanism.perDay(terms.total())));
    }
    List<Text> columns =
        List.of(
            Text.of("column.mechanism"),
            Text.of("column.unit"),
            Text.of("column.flat-faces"),
            Text.of("column.damage"),
            Text.of("column.edge"),
            Text.of("column.leaks"),
            Text.of("column.total"));
    return new Table(Text.of("section.pack"), columns, rows, Text.of("basis.pack"));
  }

  private static Section limits(PackBarrier barrier, FormedPack pack) {
    List<List<Object>> rows = new ArrayList<>();
    for (PackBarrier.Path path : barrier.paths()) {
      Course gain = path.mechanism().balance().course(pack, barrier.demand().days());
      rows.add(
          List.of(
              path.mechanism().word(),
              gain.unit(),
              gain.after(barrier.demand().days()),
              gain.limit(),
              LifeCell.orNever(path.life()),
              LifeCell.orNever(LifeCell.times(path.life(), barrier.demand().days()))));
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

  private static double capped(PackBarrier barrier, PackBarrier.Path path) {
    return Math.min(BarrierParameters.CAP, path.days() / barrier.demand().days());
  }
}
