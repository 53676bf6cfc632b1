package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.course.Life;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.leak.Channel;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.Leaks;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** What one open channel more would do to the pack. */
final class LeakSection {

  private LeakSection() {}

  static Section of(PackBarrier barrier, FormedPack pack) {
    Leaks leaks = pack.model().pack().leaks();
    FormedPack leaky = new FormedPack(oneMore(pack.model()), pack.structure());
    double asked = barrier.demand().days();
    List<List<Object>> rows = new ArrayList<>();
    for (PackBarrier.Path path : barrier.paths()) {
      Mechanism mechanism = path.mechanism();
      Life life = mechanism.life(leaky);
      double one = leaks.one(mechanism.permeant(), pack.model().climate().celsius());
      rows.add(
          List.of(
              mechanism.word(),
              mechanism.unitPerDay(),
              mechanism.perDay(one),
              LifeCell.orNever(path.life()),
              LifeCell.orNever(life),
              LifeCell.orNever(LifeCell.times(life, asked))));
    }
    List<Text> columns =
        List.of(
            Text.of("column.mechanism"),
            Text.of("column.unit"),
            Text.of("column.one-leak"),
            Text.of("column.days"),
            Text.of("column.days-leaking"),
            Text.of("column.margin"));
    Channel channel = leaks.channel();
    return new Table(
        Text.of("section.leak", channel.diameterUm(), channel.lengthUm() / 1000, leaks.count()),
        columns,
        rows,
        Text.of("basis.leak"));
  }

  private static BarrierModel oneMore(BarrierModel model) {
    return model.with(BarrierParameters.LEAKS_PER_PACK, model.pack().leaks().count() + 1);
  }
}
