package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The print of one structure, taken apart.
 *
 * @param structure the structure
 * @param total what its layers add up to
 * @param layDowns every wet layer, outside first
 * @param surfaces every printed surface that counts, outside first
 */
record PrintJob(
    Structure structure, Contribution total, List<LayDown> layDowns, List<Printed> surfaces) {

  static PrintJob of(Structure structure, Contributions contributions) {
    List<LayDown> layDowns = new ArrayList<>();
    List<Printed> surfaces = new ArrayList<>();
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      Optional.ofNullable(contributions.processes().get(layer.process()))
          .ifPresent(by -> layDowns.add(contributions.layDown(layer, by)));
      Printed.at(layer, outer, contributions.plant().context()).ifPresent(surfaces::add);
      outer = layer;
    }
    Contribution total = contributions.of(structure);
    if (SuitabilityBits.reverse(total.bits())) {
      surfaces.removeIf(Printed::provisional);
    }
    return new PrintJob(structure, total, List.copyOf(layDowns), List.copyOf(surfaces));
  }

  /** The wet layers that are print. */
  List<LayDown> prints() {
    return layDowns.stream().filter(d -> d.by().print()).toList();
  }

  /** Whether anything is printed. */
  boolean printed() {
    return layDowns.stream().anyMatch(d -> d.by().print());
  }

  /** Whether the innermost layer is print that must not touch the product. */
  boolean printOnProductSide() {
    return total.exposedPrint();
  }
}
