package plyworth.shared.scoring;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plyworth.shared.brief.Brief;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.plant.Plant;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.LayerKinds;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.Layer;

/**
 * Everything a plugin may know when it binds.
 *
 * @param brief what is asked for
 * @param materials the materials at hand
 * @param processes the processes at hand
 * @param parameters every declared parameter of the plugin, set or standard, by id
 * @param available which of the needed figures some plugin provides; for the others the plugin uses
 *     a parameter of its own and says so
 * @param draw which figure stands for each uncertain input
 * @param today today's pack and what was measured on it, to correct a prediction by
 * @param plant what the converter can make and buy; empty when nothing is said of it
 */
public record ScoringContext(
    Brief brief,
    MaterialLibrary materials,
    ProcessLibrary processes,
    Map<String, Double> parameters,
    Set<Figure> available,
    Draw draw,
    Today today,
    Optional<Plant> plant) {

  /** Copies the map and the set. */
  public ScoringContext {
    parameters = Collections.unmodifiableMap(new TreeMap<>(parameters));
    available = Collections.unmodifiableSet(new TreeSet<>(available));
  }

  /** A context in which nothing is said of a plant. */
  public ScoringContext(
      Brief brief,
      MaterialLibrary materials,
      ProcessLibrary processes,
      Map<String, Double> parameters,
      Set<Figure> available,
      Draw draw,
      Today today) {
    this(brief, materials, processes, parameters, available, draw, today, Optional.empty());
  }

  /** A context in which nothing is known of today's pack. */
  public ScoringContext(
      Brief brief,
      MaterialLibrary materials,
      ProcessLibrary processes,
      Map<String, Double> parameters,
      Set<Figure> available,
      Draw draw) {
    this(brief, materials, processes, parameters, available, draw, Today.UNKNOWN);
  }

  /** The same for another brief. */
  public ScoringContext with(Brief other) {
    return new ScoringContext(
        other, materials, processes, parameters, available, draw, today, plant);
  }

  /** The same with another draw. */
  public ScoringContext with(Draw other) {
    return new ScoringContext(
        brief, materials, processes, parameters, available, other, today, plant);
  }

  /** The same with another value of one parameter. */
  public ScoringContext with(String parameter, double value) {
    Map<String, Double> changed = new TreeMap<>(parameters);
    changed.put(parameter, value);
    return new ScoringContext(brief, materials, processes, changed, available, draw, today, plant);
  }

  /** The same in a plant. */
  public ScoringContext in(Plant other) {
    return new ScoringContext(
        brief, materials, processes, parameters, available, draw, today, Optional.of(other));
  }

  /** The value of a parameter. */
  public double parameter(String id) {
    return parameters.get(id);
  }

  /** The material of a layer. */
  public Material material(Layer layer) {
    return materials.require(layer.material());
  }

  /** Gauge of a layer, µm. */
  public double gaugeUm(Layer layer) {
    return layer.gaugeUm(material(layer).density());
  }

  /** Grammage of a layer, g/m². */
  public double grammage(Layer layer) {
    return layer.grammage(material(layer).density());
  }

  /** The tags of a layer. */
  public Set<String> kinds(Layer layer) {
    return LayerKinds.of(layer, material(layer), processes);
  }

  /**
   * A property of a layer's material, read at the layer's gauge where it is tabulated along gauge;
   * NaN when it is missing.
   */
  public double property(Layer layer, String propertyId) {
    return property(material(layer), propertyId, gaugeUm(layer));
  }

  /** A property of a material at a gauge or humidity; NaN when it is missing. */
  public double property(Material material, String propertyId, double at) {
    Range range = material.figure(propertyId, at);
    return range.known() ? draw.figure(material.id() + "/" + propertyId, range) : Double.NaN;
  }

  /** A figure of a process; NaN when it is missing. */
  public double figure(Process process, String figureId) {
    Range range = process.figure(figureId);
    return range.known() ? draw.figure("@" + process.id() + "/" + figureId, range) : Double.NaN;
  }
}
