package plyworth.plugins.barrier.layerwise;

import java.util.List;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** Parts of the layerwise state that give some of the criteria by themselves. */
interface StateGroup {

  /** The parts, in order. */
  List<StatePart> parts();

  /** Writes what a layer contributes, from component {@code at} on. */
  void contribute(Layer layer, Layer outer, double[] state, int at);

  /** Turns the joined components from {@code at} on into criteria. */
  void finish(Block block, int at);

  /** The same over intervals. */
  void bound(BoundsBlock block, int at);
}
