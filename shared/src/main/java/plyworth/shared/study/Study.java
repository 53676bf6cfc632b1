package plyworth.shared.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plyworth.shared.brief.Brief;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.plant.Plant;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;

/**
 * Everything about one question.
 *
 * @param title title on screens
 * @param question the question in one or two sentences
 * @param brief what is asked for
 * @param positions places in the stack, outside first, with what may stand there
 * @param rules what may not stand together
 * @param baseline today's structure, the one to beat
 * @param measurements what was measured on today's pack
 * @param weightings named weightings, at least one
 * @param weighting name of the weighting in use
 * @param valueFunctions value functions that differ from the plugin's, by full criterion id
 * @param limits what excludes a candidate
 * @param settings plugin parameters that differ from the standard, by plugin id and parameter id
 * @param seed what random draws of weights and inputs repeat with
 * @param materials materials the study carries; they stand in place of those of the library
 * @param processes processes the study carries; they stand in place of those of the library
 * @param plant what the converter can make and buy; empty when nothing is said of it
 * @param decision what was decided
 * @param notes remarks; may be empty
 */
public record Study(
    String title,
    String question,
    Brief brief,
    List<Position> positions,
    List<NeighbourRule> rules,
    Structure baseline,
    List<Measurement> measurements,
    List<Weighting> weightings,
    String weighting,
    Map<String, ValueFunction> valueFunctions,
    List<Limit> limits,
    Map<String, Map<String, Double>> settings,
    int seed,
    List<Material> materials,
    List<Process> processes,
    Optional<Plant> plant,
    Decision decision,
    String notes) {

  /** The seed of a study that says nothing else. */
  public static final int STANDARD_SEED = 1;

  /**
   * Copies everything.
   *
   * @throws IllegalArgumentException without positions or weightings, when two weightings or rules
   *     share a name, or when the weighting in use is not among them
   */
  public Study {
    positions = List.copyOf(positions);
    rules = List.copyOf(rules);
    measurements = List.copyOf(measurements);
    weightings = List.copyOf(weightings);
    valueFunctions = Collections.unmodifiableMap(new TreeMap<>(valueFunctions));
    limits = List.copyOf(limits);
    Map<String, Map<String, Double>> copied = new TreeMap<>();
    settings.forEach(
        (plugin, values) -> copied.put(plugin, Collections.unmodifiableMap(new TreeMap<>(values))));
    settings = Collections.unmodifiableMap(copied);
    materials = List.copyOf(materials);
    processes = List.copyOf(processes);
    if (positions.isEmpty()) {
      throw new IllegalArgumentException("the study has no position");
    }
    distinct("weighting", weightings.stream().map(Weighting::name).toList());
    distinct("rule", rules.stream().map(NeighbourRule::id).toList());
    String wanted = weighting;
    if (weightings.stream().noneMatch(w -> w.name().equals(wanted))) {
      throw new IllegalArgumentException(
          "the weighting in use, \"" + wanted + "\", is not among the weightings");
    }
  }

  /** A study that says nothing of a plant. */
  public Study(
      String title,
      String question,
      Brief brief,
      List<Position> positions,
      List<NeighbourRule> rules,
      Structure baseline,
      List<Measurement> measurements,
      List<Weighting> weightings,
      String weighting,
      Map<String, ValueFunction> valueFunctions,
      List<Limit> limits,
      Map<String, Map<String, Double>> settings,
      int seed,
      List<Material> materials,
      List<Process> processes,
      Decision decision,
      String notes) {
    this(
        title,
        question,
        brief,
        positions,
        rules,
        baseline,
        measurements,
        weightings,
        weighting,
        valueFunctions,
        limits,
        settings,
        seed,
        materials,
        processes,
        Optional.empty(),
        decision,
        notes);
  }

  private static void distinct(String what, List<String> names) {
    if (names.stream().distinct().count() < names.size()) {
      throw new IllegalArgumentException("a " + what + " stands twice: " + names);
    }
  }

  /** The weighting in use. */
  public Weighting activeWeighting() {
    return weightings.stream().filter(w -> w.name().equals(weighting)).findFirst().orElseThrow();
  }

  /** The library with the study's own materials on top. */
  public MaterialLibrary materialsAtHand() {
    return MaterialLibrary.standard().with(materials);
  }

  /** The process library with the study's own processes on top. */
  public ProcessLibrary processesAtHand() {
    return ProcessLibrary.standard().with(processes);
  }

  /** The same with another weighting in use, replacing the one of the same name or added. */
  public Study with(Weighting changed) {
    Map<String, Weighting> byName = new LinkedHashMap<>();
    weightings.forEach(w -> byName.put(w.name(), w));
    byName.put(changed.name(), changed);
    return altered(brief, List.copyOf(byName.values()), changed.name(), settings, plant);
  }

  /** The same for another brief. */
  public Study with(Brief other) {
    return altered(other, weightings, weighting, settings, plant);
  }

  /** The same with one parameter of a plugin set. */
  public Study with(String plugin, String parameter, double value) {
    Map<String, Map<String, Double>> changed = new TreeMap<>(settings);
    Map<String, Double> own = new TreeMap<>(changed.getOrDefault(plugin, Map.of()));
    own.put(parameter, value);
    changed.put(plugin, own);
    return altered(brief, weightings, weighting, changed, plant);
  }

  /** The same made in another plant. */
  public Study with(Plant other) {
    return altered(brief, weightings, weighting, settings, Optional.of(other));
  }

  private Study altered(
      Brief asked,
      List<Weighting> weighings,
      String inUse,
      Map<String, Map<String, Double>> set,
      Optional<Plant> makers) {
    return new Study(
        title,
        question,
        asked,
        positions,
        rules,
        baseline,
        measurements,
        weighings,
        inUse,
        valueFunctions,
        limits,
        set,
        seed,
        materials,
        processes,
        makers,
        decision,
        notes);
  }
}
