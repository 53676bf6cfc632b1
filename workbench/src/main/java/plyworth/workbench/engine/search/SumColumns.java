package plyworth.workbench.engine.search;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import plyworth.shared.scoring.Layerwise;
import plyworth.workbench.engine.table.Plugins;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;

/**
 * The criteria that add up over the layers, by what their plugins say; read when first asked for.
 */
final class SumColumns {

  private final Tabulation tabulation;
  private final Map<Integer, Optional<SumColumn>> byCriterion = new ConcurrentHashMap<>();

  SumColumns(Tabulation tabulation) {
    this.tabulation = tabulation;
  }

  /** The sums that a criterion is; empty when it is anything else. */
  Optional<SumColumn> of(int criterion) {
    return byCriterion.computeIfAbsent(criterion, this::read);
  }

  private Optional<SumColumn> read(int c) {
    BoundCriterion criterion = tabulation.plugins().criteria().get(c);
    Optional<Layerwise> form = tabulation.forms().get(criterion.plugin());
    if (!criterion.applies() || form.isEmpty() || tabulation.graph().count() == 0) {
      return Optional.empty();
    }
    BoundPlugin plugin = tabulation.plugins().plugins().get(criterion.plugin());
    String id = criterion.criterion().id();
    OptionalInt component = Plugins.call(plugin, () -> form.get().sumOf(id));
    return component.isEmpty()
        ? Optional.empty()
        : SumColumn.of(
            tabulation.graph(),
            tabulation.contributions(),
            tabulation.layout().start(criterion.plugin()) + component.getAsInt());
  }
}
