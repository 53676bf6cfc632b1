package plyworth.workbench.analysis;

import java.util.stream.Collectors;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.Digits;

/** Short names of structures, for charts and lists. */
public final class Labels {

  private Labels() {}

  /** Materials and amounts, outside first, without units, processes and sides. */
  public static String brief(Structure structure) {
    return structure.layers().stream().map(Labels::brief).collect(Collectors.joining(" / "));
  }

  /** Material and amount of a layer, without unit, process and side. */
  public static String brief(Layer layer) {
    return layer.material() + " " + Digits.sensible(layer.amount());
  }
}
