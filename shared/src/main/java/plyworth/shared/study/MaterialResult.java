package plyworth.shared.study;

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
}
