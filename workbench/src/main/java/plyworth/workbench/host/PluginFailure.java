package plyworth.workbench.host;

/** A plugin threw, or answered what cannot be. The work goes on without it. */
public class PluginFailure extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String pluginId;
  private final String reason;

  /**
   * A wrong answer.
   *
   * @param pluginId the plugin
   * @param reason what is wrong, for people
   */
  public PluginFailure(String pluginId, String reason) {
    super("the plugin " + pluginId + " is faulty: " + reason);
    this.pluginId = pluginId;
    this.reason = reason;
  }

  /** An exception in place of an answer. */
  public PluginFailure(String pluginId, Throwable cause) {
    super("the plugin " + pluginId + " is faulty: it throws " + cause, cause);
    this.pluginId = pluginId;
    this.reason = "it throws " + cause;
  }

  /** The plugin that is to be left out. */
  public String pluginId() {
    return pluginId;
  }

  /** What is wrong with it. */
  public String reason() {
    return reason;
  }
}
