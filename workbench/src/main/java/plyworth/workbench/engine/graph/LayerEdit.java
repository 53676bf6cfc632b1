package plyworth.workbench.engine.graph;

import java.util.Optional;
import plyworth.shared.structure.Layer;

/**
 * One change of one layer on the way from a structure to another.
 *
 * @param kind what is done
 * @param at index of the layer in the first structure, from the outside; of the layer outside which
 *     it is added
 * @param before the layer as it was; empty when it is added
 * @param after the layer as it becomes; empty when it is taken out
 */
public record LayerEdit(Kind kind, int at, Optional<Layer> before, Optional<Layer> after) {

  /** What can be done to a layer. */
  public enum Kind {
    /** The same material by the same process, in another gauge, coverage or side out. */
    ADJUST,
    /** Another layer of the same role stands in its place: a web for a web, a bond for a bond. */
    EXCHANGE,
    /** A layer comes in. */
    ADD,
    /** A layer goes. */
    TAKE_OUT
  }
}
