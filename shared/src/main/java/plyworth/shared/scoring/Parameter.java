package plyworth.shared.scoring;

/**
 * A number that the user may set for a plugin.
 *
 * @param id identifier within the plugin: lower case, digits, hyphens
 * @param title name on screens
 * @param unit unit in plain spelling; empty for a pure number
 * @param standard value when nothing is set
 * @param lowest lowest value allowed
 * @param highest highest value allowed
 * @param help what it does and where the standard value comes from
 */
public record Parameter(
    String id, Text title, String unit, double standard, double lowest, double highest, Text help) {

  /**
   * Checks that the standard value is allowed.
   *
   * @throws IllegalArgumentException when it is not
   */
  public Parameter {
    if (!(lowest <= standard && standard <= highest)) {
      throw new IllegalArgumentException("the standard value of " + id + " is out of its bounds");
    }
  }

  /** Whether a value may be set. */
  public boolean allows(double value) {
    return value >= lowest && value <= highest;
  }
}
