package plyworth.workbench.host;

/** A plugin says that it cannot score a brief at all, and what to change in it. */
public final class UnscorableBriefException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String pluginId;

  UnscorableBriefException(String pluginId, IllegalArgumentException cause) {
    super("the plugin " + pluginId + " cannot score this brief: " + cause.getMessage(), cause);
    this.pluginId = pluginId;
  }

  /** The plugin, which the study can also do without. */
  public String pluginId() {
    return pluginId;
  }
}
