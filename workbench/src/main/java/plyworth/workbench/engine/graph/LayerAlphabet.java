package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.LayerKinds;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * The distinct layers in question, numbered in the order they are first added, with what rules ask
 * of each.
 */
final class LayerAlphabet {

  private final MaterialLibrary materials;
  private final ProcessLibrary processes;
  private final Map<Layer, Integer> numbers = new LinkedHashMap<>();
  private final List<Layer> layers = new ArrayList<>();
  private final List<Set<String>> tags = new ArrayList<>();
  private final List<ProcessRole> roles = new ArrayList<>();

  LayerAlphabet(MaterialLibrary materials, ProcessLibrary processes) {
    this.materials = materials;
    this.processes = processes;
  }

  /**
   * Adds the layers of all options, in study order.
   *
   * @throws IllegalArgumentException naming the position and layer whose material or process is not
   *     known
   */
  void addAll(List<Position> positions) {
    for (Position position : positions) {
      for (Option option : position.options()) {
        for (Layer layer : option.layers()) {
          try {
            add(layer);
          } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                "at the position \"" + position.title() + "\": " + e.getMessage(), e);
          }
        }
      }
    }
  }

  /**
   * Adds a layer unless it is there, and gives its number.
   *
   * @throws IllegalArgumentException when its material or process is not known
   */
  int add(Layer layer) {
    Integer number = numbers.get(layer);
    if (number != null) {
      return number;
    }
    try {
      tags.add(LayerKinds.of(layer, materials.require(layer.material()), processes));
      roles.add(processes.role(layer));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("in the layer \"" + layer + "\": " + e.getMessage(), e);
    }
    numbers.put(layer, layers.size());
    layers.add(layer);
    return layers.size() - 1;
  }

  int size() {
    return layers.size();
  }

  Layer layer(int number) {
    return layers.get(number);
  }

  /** Whether the layer is a web, bought or made in one with others in a film die. */
  boolean isWeb(int number) {
    return roles.get(number) == ProcessRole.WEB || roles.get(number) == ProcessRole.WEB_PART;
  }

  boolean isBond(int number) {
    return roles.get(number) == ProcessRole.BOND;
  }

  /** The layers that an expression means. */
  BitSet matching(KindExpression kind) {
    BitSet matching = new BitSet();
    IntStream.range(0, size()).filter(n -> kind.matches(tags.get(n))).forEach(matching::set);
    return matching;
  }

  /** All webs. */
  BitSet webs() {
    BitSet webs = new BitSet();
    IntStream.range(0, size()).filter(this::isWeb).forEach(webs::set);
    return webs;
  }

  /** All bonds. */
  BitSet bonds() {
    BitSet bonds = new BitSet();
    IntStream.range(0, size()).filter(this::isBond).forEach(bonds::set);
    return bonds;
  }
}
