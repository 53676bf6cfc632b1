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
 * @param results what laboratories and trials found since
 * @param remarks what was said of candidates
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
    Results results,
    List<Remark> remarks,
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
    remarks = List.copyOf(remarks);
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

  private static void distinct(String what, List<String> names) {
    if (names.stream().distinct().count() < names.size()) {
      throw new IllegalArgumentException("a " + what + " stands twice: " + names);
    }
  }

  /** The weighting in use. */
  public Weighting activeWeighting() {
    return weightings.stream().filter(w -> w.name().equals(weighting)).findFirst().orElseThrow();
  }

  /** The library with the study's own materials on top, corrected by what was measured. */
  public MaterialLibrary materialsAtHand() {
    return results.correct(materialsBefore());
  }

  /** The same before anything was measured. */
  public MaterialLibrary materialsBefore() {
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
    Altered altered = new Altered(this);
    altered.weightings = List.copyOf(byName.values());
    altered.weighting = changed.name();
    return altered.study();
  }

  /** The same under other words. */
  public Study withWords(String otherTitle, String otherQuestion, String otherNotes) {
    Altered altered = new Altered(this);
    altered.title = otherTitle;
    altered.question = otherQuestion;
    altered.notes = otherNotes;
    return altered.study();
  }

  /** The same with another structure to beat. */
  public Study withBaseline(Structure other) {
    Altered altered = new Altered(this);
    altered.baseline = other;
    return altered.study();
  }

  /** The same for another brief. */
  public Study with(Brief other) {
    Altered altered = new Altered(this);
    altered.brief = other;
    return altered.study();
  }

  /** The same with one parameter of a plugin set. */
  public Study with(String plugin, String parameter, double value) {
    return PluginSettings.set(this, plugin, parameter, value);
  }

  /** The same with other settings of plugins. */
  public Study withSettings(Map<String, Map<String, Double>> other) {
    Altered altered = new Altered(this);
    altered.settings = other;
    return altered.study();
  }

  /** The same with other measurements of today's pack. */
  public Study withMeasurements(List<Measurement> other) {
    Altered altered = new Altered(this);
    altered.measurements = other;
    return altered.study();
  }

  /** The same made in another plant. */
  public Study with(Plant other) {
    Altered altered = new Altered(this);
    altered.plant = Optional.of(other);
    return altered.study();
  }

  /** The same after other results. */
  public Study with(Results other) {
    Altered altered = new Altered(this);
    altered.results = other;
    return altered.study();
  }

  /** The same with another decision. */
  public Study with(Decision other) {
    Altered altered = new Altered(this);
    altered.decision = other;
    return altered.study();
  }

  /** The same with other positions. */
  public Study withPositions(List<Position> other) {
    Altered altered = new Altered(this);
    altered.positions = other;
    return altered.study();
  }

  /** The same with other limits. */
  public Study withLimits(List<Limit> other) {
    Altered altered = new Altered(this);
    altered.limits = other;
    return altered.study();
  }

  /** The same with other remarks. */
  public Study withRemarks(List<Remark> other) {
    Altered altered = new Altered(this);
    altered.remarks = other;
    return altered.study();
  }

  /** The same carrying these materials and processes. */
  public Study carrying(List<Material> carried, List<Process> passes) {
    Altered altered = new Altered(this);
    altered.materials = carried;
    altered.processes = passes;
    return altered.study();
  }

  /** A study in the making, so that a change names only what changes. */
  private static final class Altered {

    private final Study before;
    private String title;
    private String question;
    private Brief brief;
    private Structure baseline;
    private List<Position> positions;
    private List<Limit> limits;
    private List<Measurement> measurements;
    private List<Weighting> weightings;
    private String weighting;
    private Map<String, Map<String, Double>> settings;
    private List<Material> materials;
    private List<Process> processes;
    private Optional<Plant> plant;
    private Results results;
    private List<Remark> remarks;
    private Decision decision;
    private String notes;

    Altered(Study before) {
      this.before = before;
      title = before.title;
      question = before.question;
      brief = before.brief;
      baseline = before.baseline;
      positions = before.positions;
      limits = before.limits;
      measurements = before.measurements;
      weightings = before.weightings;
      weighting = before.weighting;
      settings = before.settings;
      materials = before.materials;
      processes = before.processes;
      plant = before.plant;
      results = before.results;
      remarks = before.remarks;
      decision = before.decision;
      notes = before.notes;
    }

    Study study() {
      return new Study(
          title,
          question,
          brief,
          positions,
          before.rules,
          baseline,
          measurements,
          weightings,
          weighting,
          before.valueFunctions,
          limits,
          settings,
          before.seed,
          materials,
          processes,
          plant,
          results,
          remarks,
          decision,
          notes);
    }
  }
}
