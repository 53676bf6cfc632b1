package plyworth.workbench.command.print;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Json;
import plyworth.shared.study.WeightsBy;
import plyworth.workbench.host.Digits;

/** Where the weights of a weighting come from. */
public final class WeightsByText {

  private WeightsByText() {}

  /** After the name of the weighting; empty for plain numbers. */
  public static String origin(WeightsBy by) {
    if (by instanceof WeightsBy.SwingPoints) {
      return ", from swing points (100 for the swing from worst to best that matters most)";
    }
    if (by instanceof WeightsBy.RankOrder) {
      return ", from the order of importance alone (rank-order centroid)";
    }
    return "";
  }

  /** After a criterion: what was stated of it; empty for plain numbers. */
  public static String stated(WeightsBy by, String criterion) {
    if (by instanceof WeightsBy.SwingPoints swing) {
      return "; " + Digits.sensible(swing.points().getOrDefault(criterion, 0.0)) + " points";
    }
    if (by instanceof WeightsBy.RankOrder order) {
      return "; place " + (order.criteria().indexOf(criterion) + 1);
    }
    return "";
  }

  /** How the weights are stated, and what was stated where it is more than the weights. */
  static void put(Map<String, Json> entries, WeightsBy by) {
    if (by instanceof WeightsBy.SwingPoints swing) {
      Map<String, Json> points = new LinkedHashMap<>();
      swing.points().forEach((id, given) -> points.put(id, Json.of(Digits.exported(given))));
      entries.put("by", Json.of("swing-points"));
      entries.put("swingPoints", Json.of(points));
    } else if (by instanceof WeightsBy.RankOrder order) {
      entries.put("by", Json.of("order"));
      entries.put("order", Json.of(order.criteria().stream().map(Json::of).toList()));
    } else {
      entries.put("by", Json.of("numbers"));
    }
  }
}
