package plyworth.shared.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.AmountUnit;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Side;
import plyworth.shared.structure.Structure;

/** Random structures of the standard materials, each layer put down by a process that suits it. */
public final class RandomStructures {

  private static final List<Material> MATERIALS = List.copyOf(MaterialLibrary.standard().all());

  private static final Map<String, List<String>> PROCESSES =
      Map.of(
          "web", List.of(""),
          "resin", List.of("extrusion-lamination", "extrusion-coating", "coextruded"),
          "adhesive", List.of("dry-bond", "solventless", "water-based-lamination"),
          "coating", List.of("dispersion-coating", "lacquering"),
          "ink", List.of("flexo-water", "flexo-solvent", "gravure-solvent", "flexo-uv"));

  private RandomStructures() {}

  /** A structure of one to nine layers; the same seed gives the same structure. */
  public static Structure structure(long seed) {
    Random random = new Random(seed);
    List<Layer> layers = new ArrayList<>();
    int count = 1 + random.nextInt(9);
    for (int i = 0; i < count; i++) {
      layers.add(layer(random));
    }
    return new Structure(layers);
  }

  /** One layer of a random material. */
  public static Layer layer(Random random) {
    Material material = MATERIALS.get(random.nextInt(MATERIALS.size()));
    List<String> usable =
        PROCESSES.entrySet().stream()
            .filter(e -> material.kinds().contains(e.getKey()))
            .sorted(Map.Entry.comparingByKey())
            .flatMap(e -> e.getValue().stream())
            .toList();
    String process = usable.isEmpty() ? "" : usable.get(random.nextInt(usable.size()));
    AmountUnit unit = random.nextBoolean() ? AmountUnit.UM : AmountUnit.GSM;
    double amount = Math.exp(random.nextDouble() * Math.log(100));
    Side side = random.nextInt(4) == 0 ? Side.METAL_IN : Side.UNSTATED;
    double coverage =
        material.kinds().contains("ink") ? 0.05 + 0.95 * random.nextDouble() : Double.NaN;
    return new Layer(material.id(), amount, unit, process, side, coverage);
  }
}
