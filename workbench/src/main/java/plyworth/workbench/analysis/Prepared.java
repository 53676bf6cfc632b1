package plyworth.workbench.analysis;

import plyworth.shared.scoring.Draw;
import plyworth.shared.study.PluginSettings;
import plyworth.shared.study.Study;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.PluginCatalog;

/**
 * A study with the plugins bound to it at the typical figures.
 *
 * @param study the study
 * @param catalog the plugins at hand
 * @param bound the plugins bound to the study
 */
public record Prepared(Study study, PluginCatalog catalog, BoundPlugins bound) {

  /**
   * Binds the plugins, without those that the study leaves out. One that fails is left out as well;
   * {@link #catalog} then marks it faulty.
   *
   * @throws plyworth.workbench.host.UnscorableBriefException when a plugin cannot score the brief
   * @throws IllegalArgumentException when a setting is out of its bounds
   */
  public static Prepared of(Study study, PluginCatalog catalog) {
    return WithoutFaulty.run(
        catalog.without(PluginSettings.leftOut(study)),
        working -> new Prepared(study, working, BoundPlugins.bind(working, study, Draw.TYPICAL)));
  }
}
