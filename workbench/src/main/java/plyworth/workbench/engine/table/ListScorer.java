package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/**
 * Scores the same structures in one world after another, by the layerwise forms of the plugins; for
 * one thread.
 */
public final class ListScorer {

  private final ListedStructures listed;
  private final Predicate<BoundCriterion> wanted;
  private final PluginBlocks.Rows rows = new Listed();
  private List<Join> parts = List.of();
  private boolean[] kept;
  private ListedStates states;
  private PluginBlocks blocks;

  private final class Listed implements PluginBlocks.Rows {
    @Override
    public Structure structure(int row) {
      return listed.structure(row);
    }

    @Override
    public boolean goOn() {
      return true;
    }
  }

  /**
   * A scorer.
   *
   * @param wanted criteria of which figures are wanted
   */
  public ListScorer(ListedStructures listed, Predicate<BoundCriterion> wanted) {
    this.listed = listed;
    this.wanted = wanted;
  }

  /**
   * Scores in a world.
   *
   * @param bound the plugins bound to it; the same plugins every time
   * @throws ScoringFault when a plugin throws or gives what cannot be
   */
  public ListedFigures score(BoundPlugins bound) {
    kept = new boolean[bound.criteria().size()];
    for (int c = 0; c < kept.length; c++) {
      BoundCriterion criterion = bound.criteria().get(c);
      kept[c] = criterion.applies() && wanted.test(criterion);
    }
    List<Optional<Layerwise>> forms = forms(bound);
    getReady(bound, forms);
    for (int p = 0; p < forms.size(); p++) {
      if (forms.get(p).isPresent()) {
        states.contribute(p, bound.plugins().get(p), forms.get(p).get());
      }
    }
    states.join();
    ListedFigures figures = new ListedFigures(listed, bound.criteria(), kept);
    blocks.finish(listed.count(), states, rows, figures);
    return figures;
  }

  private List<Optional<Layerwise>> forms(BoundPlugins bound) {
    List<Optional<Layerwise>> forms = new ArrayList<>();
    for (int p = 0; p < bound.plugins().size(); p++) {
      BoundPlugin plugin = bound.plugins().get(p);
      Set<String> asked = new HashSet<>();
      for (int c = 0; c < kept.length; c++) {
        BoundCriterion criterion = bound.criteria().get(c);
        if (kept[c] && criterion.plugin() == p) {
          asked.add(criterion.criterion().id());
        }
      }
      forms.add(
          Plugins.call(plugin, () -> plugin.scorer().layerwise().map(form -> form.only(asked))));
    }
    return forms;
  }

  /** Makes room; where states have the same parts as before, they take the same room. */
  private void getReady(BoundPlugins bound, List<Optional<Layerwise>> forms) {
    List<Join> now = new ArrayList<>();
    for (int p = 0; p < forms.size(); p++) {
      Optional<Layerwise> form = forms.get(p);
      now.add(null);
      List<StatePart> state =
          Plugins.call(bound.plugins().get(p), () -> form.map(Layerwise::state).orElse(List.of()));
      state.forEach(part -> now.add(part.join()));
    }
    if (blocks == null || !now.equals(parts)) {
      StateLayout layout = StateLayout.of(bound.plugins(), forms);
      states = new ListedStates(listed, layout);
      blocks = new PluginBlocks(bound, forms, layout, kept);
      parts = now;
    }
    blocks.go(bound, forms);
  }
}
