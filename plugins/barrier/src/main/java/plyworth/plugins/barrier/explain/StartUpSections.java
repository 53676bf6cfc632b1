package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plyworth.plugins.barrier.course.VolatileBalance;
import plyworth.plugins.barrier.diffusion.DiffusionLayer;
import plyworth.plugins.barrier.diffusion.LayerStack.Moment;
import plyworth.plugins.barrier.diffusion.TimeLag;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.pack.StartUp;
import plyworth.shared.material.Property;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** How a volatile content begins to pass its laminate. */
final class StartUpSections {

  private static final double HOURS = 24;
  private static final double MILLIGRAMS = 1000;

  private final BarrierModel model;
  private final VolatileBalance balance;
  private final StartUp start;

  private StartUpSections(BarrierModel model, VolatileBalance balance, StartUp start) {
    this.model = model;
    this.balance = balance;
    this.start = start;
  }

  /** Table, chart and note, or a note that says why there are none. */
  static List<Section> of(BarrierModel model, Structure structure, PackBarrier barrier) {
    if (Double.isNaN(barrier.volatileLoss())) {
      return List.of();
    }
    VolatileBalance balance = barrier.demand().alcohol().orElseThrow();
    Optional<Layer> unknown = StartUp.unknown(model, structure, balance.permeant());
    Text basis = Text.of("basis.lag");
    return StartUp.of(model, structure, balance)
        .map(start -> new StartUpSections(model, balance, start).all())
        .orElseGet(
            () ->
                List.of(
                    new Note(
                        unknown
                            .map(layer -> Text.of("note.lag-unknown", layer.material()))
                            .orElse(Text.of("note.lag-tight")),
                        basis)));
  }

  private List<Section> all() {
    List<Moment> course = start.course();
    return List.of(table(), chart(course), note(course));
  }

  private Section table() {
    double[] shares = TimeLag.byLayer(start.layers());
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < shares.length; i++) {
      Layer layer = start.names().get(i);
      DiffusionLayer diffusion = start.layers().get(i);
      double own = diffusion.resistance() * diffusion.capacity() / 6;
      Optional<Property> property =
          model.context().material(layer).property(balance.permeant().diffusivityId());
      rows.add(
          List.of(
              layer.toString(),
              model.context().gaugeUm(layer),
              StartUp.diffusivity(model, layer, balance.permeant()),
              HOURS * own,
              HOURS * shares[i],
              property.map(StartUpSections::origin).orElse("–")));
    }
    List<Text> columns =
        List.of(
            Text.of("column.layer-inside"),
            Text.of("column.gauge"),
            Text.of("column.diffusivity"),
            Text.of("column.own-lag"),
            Text.of("column.share-of-lag"),
            Text.of("column.source"));
    return new Table(Text.of("section.lag"), columns, rows, Text.of("basis.lag"));
  }

  private static String origin(Property property) {
    return property.points().get(0).kind().name().toLowerCase(Locale.ROOT)
        + ": "
        + property.points().get(0).source();
  }

  private Section chart(List<Moment> course) {
    return new Curves(
        Text.of("curve.start-up"),
        Text.of("axis.hours"),
        Text.of("axis.milligrams"),
        List.of(
            series("series.without-start-up", course, m -> start.steadyG() * m.day()),
            series("series.left-pack", course, m -> start.faceM2() * m.left()),
            series("series.left-liquid", course, m -> start.faceM2() * m.entered())),
        Text.of("basis.start-up"));
  }

  private static Series series(String key, List<Moment> course, ToDoubleFunction<Moment> grams) {
    List<Double> hours = new ArrayList<>();
    List<Double> milligrams = new ArrayList<>();
    for (int i = 0; i < course.size(); i += 10) {
      hours.add(HOURS * course.get(i).day());
      milligrams.add(MILLIGRAMS * grams.applyAsDouble(course.get(i)));
    }
    return new Series(Text.of(key), hours, milligrams);
  }

  private Section note(List<Moment> course) {
    return new Note(
        Text.of(
            "note.lag",
            HOURS * start.lagDays(),
            HOURS * start.steadyDay(course),
            model.demand().days(),
            MILLIGRAMS * start.heldG(),
            100 * start.steadyG() * start.lagDays() / balance.chargeG()),
        Text.of("basis.start-up"));
  }
}
