package plyworth.shared.route;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.material.Property;
import plyworth.shared.quantity.Range;

/**
 * A generic way to put a layer down, with its sourced figures: speed, waste, ink make-up …
 *
 * @param id identifier, for example {@code extrusion-lamination}
 * @param name name on screens
 * @param role what it does to the web
 * @param figures figures by id
 * @param note remark; may be empty
 */
public record Process(
    String id, String name, ProcessRole role, Map<String, Property> figures, String note) {

  /** Sorts the figures. */
  public Process {
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
  }

  /** A figure that depends on nothing; {@link Range#UNKNOWN} when it is missing. */
  public Range figure(String figureId) {
    Property property = figures.get(figureId);
    return property == null ? Range.UNKNOWN : property.range();
  }
}
