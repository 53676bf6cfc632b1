package plyworth.shared.scoring;

import java.util.List;

/**
 * Who a plugin is.
 *
 * @param id identifier: lower case and hyphens; first part of the full id of its criteria
 * @param title name on screens
 * @param version version of the plugin
 * @param cautions what users must bear in mind, at least one; shown beside its figures
 */
public record PluginCard(String id, Text title, String version, List<Text> cautions) {

  /**
   * Checks the id.
   *
   * @throws IllegalArgumentException for a malformed id or no caution
   */
  public PluginCard {
    if (!id.matches("[a-z]+(-[a-z]+)*")) {
      throw new IllegalArgumentException("\"" + id + "\" is not a plugin id");
    }
    cautions = List.copyOf(cautions);
    if (cautions.isEmpty()) {
      throw new IllegalArgumentException("the plugin " + id + " names no caution");
    }
  }
}
