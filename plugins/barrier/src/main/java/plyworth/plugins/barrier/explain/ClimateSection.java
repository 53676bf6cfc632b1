package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** The climate season by season, with its vapour pressure and mean kinetic temperature. */
final class ClimateSection {

  private ClimateSection() {}

  static Section of(Climate climate) {
    List<List<Object>> rows = new ArrayList<>();
    for (Season season : climate.seasons()) {
      double saturated = SaturatedVapour.pascal(season.temperatureC());
      rows.add(
          List.of(
              (double) (rows.size() + 1),
              season.days(),
              season.temperatureC(),
              season.humidityPercent(),
              saturated,
              saturated * season.humidityPercent() / 100));
    }
    List<Text> columns =
        List.of(
            Text.of("column.season"),
            Text.of("column.season-days"),
            Text.of("column.temperature"),
            Text.of("column.outside"),
            Text.of("column.saturated"),
            Text.of("column.vapour"));
    return new Table(
        Text.of("section.seasons", climate.name(), climate.meanKineticC()),
        columns,
        rows,
        Text.of("basis.seasons"));
  }
}
