package plyworth.shared.store;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;

/** Gives a study every material and process it uses, so that it opens elsewhere unchanged. */
public final class SelfContained {

  private SelfContained() {}

  /**
   * The study, carrying whatever it uses and did not carry.
   *
   * @throws IllegalArgumentException when a material or process it uses is not at hand
   */
  public static Study of(Study study) {
    MaterialLibrary library = study.materialsBefore();
    Map<String, Material> materials = new TreeMap<>();
    study.materials().forEach(m -> materials.put(m.id(), m));
    Stream.of(
            layers(study).map(Layer::material),
            plantMaterials(study),
            study.results().materials().stream().map(MaterialResult::material))
        .flatMap(ids -> ids)
        .map(library::require)
        .forEach(m -> materials.put(m.id(), m));
    return study.carrying(List.copyOf(materials.values()), processes(study));
  }

  private static Stream<String> plantMaterials(Study study) {
    return study.plant().stream().flatMap(p -> p.webs().stream()).map(BoughtWeb::material);
  }

  private static Stream<String> plantProcesses(Study study) {
    return study.plant().stream()
        .flatMap(
            p ->
                Stream.concat(
                    p.centres().stream().flatMap(c -> c.processes().stream()),
                    p.webs().stream().map(BoughtWeb::process)));
  }

  /** Slitting ends every route. */
  private static List<Process> processes(Study study) {
    ProcessLibrary library = study.processesAtHand();
    Map<String, Process> processes = new TreeMap<>();
    study.processes().forEach(p -> processes.put(p.id(), p));
    Stream.of(
            layers(study).map(Layer::process),
            plantProcesses(study),
            Stream.of(ProcessLibrary.SLITTING))
        .flatMap(ids -> ids)
        .filter(id -> !id.isEmpty())
        .map(library::require)
        .forEach(p -> processes.put(p.id(), p));
    return List.copyOf(processes.values());
  }

  private static Stream<Layer> layers(Study study) {
    String decided = study.decision().structure();
    return Stream.of(
            study.positions().stream().flatMap(p -> p.options().stream()).map(o -> o.layers()),
            Stream.of(study.baseline().layers()),
            study.results().candidates().stream().map(r -> r.structure().layers()),
            study.remarks().stream().map(r -> r.structure().layers()),
            Stream.of(decided)
                .filter(d -> !d.isBlank())
                .map(d -> LayerNotation.readStructure(d).layers()))
        .flatMap(lists -> lists)
        .flatMap(List::stream);
  }
}
