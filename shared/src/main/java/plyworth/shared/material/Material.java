package plyworth.shared.material;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plyworth.shared.quantity.Range;

/**
 * A generic web, film, foil, coating, resin, adhesive or ink.
 *
 * @param id identifier: lower case, digits, hyphens
 * @param name name on screens
 * @param family material family, for example {@code polyethylene}
 * @param kinds tags that rules speak of, for example {@code web}, {@code porous}
 * @param basis what the figures describe: resin, film, paper, foil …
 * @param aliases other ids it answers to
 * @param properties facts by id
 * @param note remark; may be empty
 */
public record Material(
    String id,
    String name,
    String family,
    Set<String> kinds,
    String basis,
    List<String> aliases,
    Map<String, Property> properties,
    String note) {

  /** Id of the density, kg/m³: the one property every material must have. */
  public static final String DENSITY = "density";

  /**
   * Copies and sorts.
   *
   * @throws IllegalArgumentException for a malformed id or a missing density
   */
  public Material {
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException(
          "\"" + id + "\" is not a material id: use lower case, digits and single hyphens");
    }
    kinds = Collections.unmodifiableSet(new TreeSet<>(kinds));
    aliases = List.copyOf(aliases);
    properties = Collections.unmodifiableMap(new TreeMap<>(properties));
    if (!properties.containsKey(DENSITY)) {
      throw new IllegalArgumentException("material " + id + " has no density");
    }
  }

  /** The property of that id, if the material has it. */
  public Optional<Property> property(String propertyId) {
    return Optional.ofNullable(properties.get(propertyId));
  }

  /** The figure of a property at a gauge or humidity; {@link Range#UNKNOWN} when it is missing. */
  public Range figure(String propertyId, double at) {
    Property property = properties.get(propertyId);
    return property == null ? Range.UNKNOWN : property.at(at);
  }

  private Material carrying(Map<String, Property> other) {
    return new Material(id, name, family, kinds, basis, aliases, other, note);
  }

  /** The same material with a property added, or in place of that of the same id. */
  public Material with(Property property) {
    Map<String, Property> more = new TreeMap<>(properties);
    more.put(property.id(), property);
    return carrying(more);
  }

  /**
   * The same material with a property taken out, so that it is unknown.
   *
   * @throws IllegalArgumentException for the density, which every material has
   */
  public Material without(String propertyId) {
    Map<String, Property> fewer = new TreeMap<>(properties);
    fewer.remove(propertyId);
    return carrying(fewer);
  }

  /**
   * A material of another id and name that is otherwise the same, aliases aside.
   *
   * @throws IllegalArgumentException for a malformed id
   */
  public Material named(String otherId, String otherName) {
    return new Material(otherId, otherName, family, kinds, basis, List.of(), properties, note);
  }

  /** Typical density, kg/m³. */
  public double density() {
    return properties.get(DENSITY).range().typical();
  }
}
