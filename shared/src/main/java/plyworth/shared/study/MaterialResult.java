package plyworth.shared.study;

import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.scoring.Measurement;

/**
 * What a laboratory found of a material.
 *
 * @param material id of the material
 * @param at what the reading holds for, where the property is a table: a gauge in µm, a relative
 *     humidity in %; NaN when it holds always
 * @param reading the reading; its figure is the id of the property, its unit that of the property
 */
public record MaterialResult(String material, double at, Measurement reading) {

  /** Id of the property that was measured. */
  public String property() {
    return reading.figure();
  }

  /**
   * Checks that the reading can correct a material.
   *
   * @param library the materials before any correction
   * @throws IllegalArgumentException when the material is not there, the unit is another, a table
   *     is not told where, or the figure can be 0, which has no logarithm
   */
  public void requireIn(MaterialLibrary library) {
    Property before = library.require(material).property(property()).orElse(null);
    if (before == null) {
      return;
    }
    String subject = property() + " of " + material;
    if (!reading.unit().equals(before.unit())) {
      throw new IllegalArgumentException(
          subject
              + " is given in \""
              + reading.unit()
              + "\". Give it in \""
              + before.unit()
              + "\".");
    }
    if (before.points().size() > 1 && Double.isNaN(at)) {
      throw new IllegalArgumentException(
          subject + " is a table. Say under \"at\" for which gauge or humidity it was measured.");
    }
    if (before.points().stream().anyMatch(point -> point.range().low() <= 0)) {
      throw new IllegalArgumentException(
          subject
              + " can be 0, and a reading corrects its logarithm. Write the figure into the"
              + " material, with its source.");
    }
  }
}
