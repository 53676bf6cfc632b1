package plyworth.shared.scoring;

import java.util.List;
import java.util.Optional;
import plyworth.shared.structure.Structure;

/**
 * Today's pack, and what is known of it from measurement.
 *
 * @param structure its layers; empty when there is none
 * @param measurements what was measured on it
 */
public record Today(Optional<Structure> structure, List<Measurement> measurements) {

  /** Nothing is known of today's pack. */
  public static final Today UNKNOWN = new Today(Optional.empty(), List.of());

  /** Copies the measurements. */
  public Today {
    measurements = List.copyOf(measurements);
  }

  /** The measurements of a plugin's criterion. */
  public List<Measurement> of(String pluginId, String criterionId) {
    String id = pluginId + "/" + criterionId;
    return measurements.stream().filter(m -> m.figure().equals(id)).toList();
  }
}
