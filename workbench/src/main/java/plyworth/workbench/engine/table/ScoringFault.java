package plyworth.workbench.engine.table;

import plyworth.workbench.host.PluginFailure;

/** A plugin threw, or answered what cannot be, while candidates were scored. */
public final class ScoringFault extends PluginFailure {

  private static final long serialVersionUID = 1L;

  /**
   * A wrong answer.
   *
   * @param pluginId the plugin
   * @param reason what is wrong, for people
   */
  public ScoringFault(String pluginId, String reason) {
    super(pluginId, reason);
  }

  /** An exception in place of an answer. */
  ScoringFault(String pluginId, Throwable cause) {
    super(pluginId, cause);
  }
}
