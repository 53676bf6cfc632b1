package plyworth.shared.store;

import java.util.List;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.study.WeightsBy;

/** How a weighting states its weights: one of three keys. */
final class WeightsByCodec {

  private static final String WEIGHTS = "weights";
  private static final String POINTS = "swing_points";
  private static final String ORDER = "order";

  private WeightsByCodec() {}

  static WeightsBy read(Fields fields) {
    List<String> there = List.of(WEIGHTS, POINTS, ORDER).stream().filter(fields::has).toList();
    if (there.size() > 1) {
      throw new DataException(
          fields.value(there.get(1)).place(),
          "the weights are stated both as " + there.get(0) + " and as " + there.get(1),
          "Keep one of the two.");
    }
    return switch (there.isEmpty() ? WEIGHTS : there.get(0)) {
      case POINTS ->
          new WeightsBy.SwingPoints(
              PreferenceCodec.numbers(fields.value(POINTS), CriterionId::checked));
      case ORDER -> new WeightsBy.RankOrder(fields.list(ORDER, CriterionId::read));
      default ->
          new WeightsBy.Numbers(
              PreferenceCodec.numbers(fields.value(WEIGHTS), CriterionId::checked));
    };
  }

  static Entries write(Entries entries, WeightsBy by) {
    if (by instanceof WeightsBy.SwingPoints swing) {
      return entries.put(POINTS, PreferenceCodec.write(swing.points()));
    }
    if (by instanceof WeightsBy.RankOrder order) {
      return entries.put(ORDER, order.criteria(), Json::of);
    }
    return entries.put(WEIGHTS, PreferenceCodec.write(by.weights()));
  }
}
