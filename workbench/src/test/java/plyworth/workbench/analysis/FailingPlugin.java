package plyworth.workbench.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Structure;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/** A plugin that fails somewhere. */
final class FailingPlugin extends ToyPlugin {

  /** Where it fails. */
  enum At {
    /** When it is bound. */
    BIND,
    /** When it says that the brief cannot be scored. */
    BRIEF,
    /** When it scores one structure. */
    SCORE,
    /** When it finishes a block. */
    FINISH
  }

  private final At at;

  private FailingPlugin(At at) {
    super("failing", List.of(Join.SUM), List.of(), List.of(), true, false);
    this.at = at;
  }

  /** The built-in plugins and one that fails. */
  static PluginCatalog among(At at) {
    PluginCatalog built = BrothStudy.plugins();
    List<LoadedPlugin> plugins = new ArrayList<>(built.plugins());
    plugins.add(new LoadedPlugin("failing", new FailingPlugin(at), Path.of("failing.jar")));
    return new PluginCatalog(built.folder(), plugins, built.faults());
  }

  private void failAt(At place) {
    if (at == place) {
      throw new IllegalStateException("lost at " + place);
    }
  }

  @Override
  public Scorer bind(ScoringContext context) {
    if (at == At.BRIEF) {
      throw new IllegalArgumentException("no climate like this; choose another");
    }
    failAt(At.BIND);
    return super.bind(context);
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    failAt(At.SCORE);
    return super.score(structure, needed);
  }

  @Override
  public void finish(Block block) {
    failAt(At.FINISH);
    super.finish(block);
  }
}
