package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;

/**
 * A place in a study that speaks of a material.
 *
 * @param where what kind of place
 * @param what the option, structure, web or property there, as it is written in the study
 * @param position title of the position; empty elsewhere
 */
public record MaterialUse(Where where, String what, String position) {

  /** Kinds of places. */
  public enum Where {
    /** An option of a position. */
    OPTION,
    /** Today's structure. */
    BASELINE,
    /** A web that the plant buys. */
    PLANT,
    /** A reading of a laboratory or a trial. */
    RESULT,
    /** A structure that a remark was left on. */
    REMARK,
    /** The structure that was decided on. */
    DECISION
  }

  /** Every place that speaks of a material, by its id or another id it answers to. */
  public static List<MaterialUse> of(Study study, String material) {
    Search search = new Search(study.materialsBefore(), material);
    for (Position position : study.positions()) {
      for (Option option : position.options()) {
        search.layers(Where.OPTION, option, position.title(), option.layers());
      }
    }
    search.structure(Where.BASELINE, study.baseline());
    study.plant().stream()
        .flatMap(plant -> plant.webs().stream())
        .map(BoughtWeb::material)
        .forEach(id -> search.id(Where.PLANT, id, id));
    study
        .results()
        .materials()
        .forEach(result -> search.id(Where.RESULT, result.property(), result.material()));
    study
        .results()
        .candidates()
        .forEach(result -> search.structure(Where.RESULT, result.structure()));
    study.remarks().forEach(remark -> search.structure(Where.REMARK, remark.structure()));
    if (!study.decision().structure().isBlank()) {
      search.structure(Where.DECISION, LayerNotation.readStructure(study.decision().structure()));
    }
    return List.copyOf(search.found);
  }

  /** Ids of the materials that a study speaks of, wherever. */
  public static Set<String> used(Study study) {
    Set<String> used = new TreeSet<>();
    for (Material material : study.materialsBefore().all()) {
      if (!of(study, material.id()).isEmpty()) {
        used.add(material.id());
      }
    }
    return used;
  }

  /** What was found so far of one material. */
  private static final class Search {

    private final MaterialLibrary library;
    private final String wanted;
    private final List<MaterialUse> found = new ArrayList<>();

    Search(MaterialLibrary library, String wanted) {
      this.library = library;
      this.wanted = wanted;
    }

    void structure(Where where, Structure structure) {
      layers(where, structure, "", structure.layers());
    }

    /** What is not found is not written out. */
    void layers(Where where, Object what, String position, List<Layer> layers) {
      if (layers.stream().anyMatch(layer -> speaksOfIt(layer.material()))) {
        found.add(new MaterialUse(where, what.toString(), position));
      }
    }

    void id(Where where, String what, String id) {
      if (speaksOfIt(id)) {
        found.add(new MaterialUse(where, what, ""));
      }
    }

    private boolean speaksOfIt(String id) {
      return library.find(id).filter(material -> material.id().equals(wanted)).isPresent();
    }
  }
}
