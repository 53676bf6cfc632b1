package plyworth.plugins.printmethod;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.scoring.Outcome;

/**
 * A process that puts a liquid down: print, or a solvent- or water-based adhesive or coating.
 *
 * @param process the process
 * @param print whether it prints
 * @param makeUp the liquid, ready to run
 * @param kind what the liquid dries by
 * @param abatement what keeps its solvent out of the air
 * @param method what is known of it as a print method
 * @param perPass energy that each pass takes whatever it lays down, kWh per 1000 m²
 */
record WetProcess(
    Process process,
    boolean print,
    MakeUp makeUp,
    InkKind kind,
    Abatement abatement,
    Method method,
    double perPass) {

  /** All wet processes of a plant by id. */
  static Map<String, WetProcess> all(Plant plant) {
    Map<String, WetProcess> wet = new LinkedHashMap<>();
    for (Process process : plant.context().processes().processes().values()) {
      boolean print = process.role() == ProcessRole.PRINT;
      if (print || process.figure("adhesive-solids").known()) {
        wet.put(process.id(), of(plant, process, print));
      }
    }
    return wet;
  }

  private static WetProcess of(Plant plant, Process process, boolean print) {
    MakeUp makeUp = MakeUp.of(plant.context(), process, print ? "ink-" : "adhesive-");
    InkKind kind = makeUp.kind();
    Method method = Method.of(process.id());
    double perPass = print ? perPass(plant, process, method) : 0;
    return new WetProcess(
        process, print, makeUp, kind, plant.abatement(process, kind), method, perPass);
  }

  private static double perPass(Plant plant, Process process, Method method) {
    return switch (method.drying()) {
      case HOT_AIR -> 0;
      case LAMPS ->
          Curing.lamps(
              plant.context().figure(process, "colours"),
              plant.context().parameter(Parameters.LAMP_POWER),
              plant.context().figure(process, "speed"));
      case FUSED -> plant.context().figure(process, "heat");
    };
  }

  /** What its solvent is. */
  Blend blend() {
    return method.blend(kind);
  }

  /** The first of some figures that the process lacks. */
  Optional<Outcome.DataMissing> missing(String... figures) {
    return Arrays.stream(figures)
        .filter(id -> !process.figure(id).known())
        .findFirst()
        .map(id -> new Outcome.DataMissing("@" + process.id(), id));
  }
}
