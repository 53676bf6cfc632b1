package plyworth.workbench.engine.graph;

import java.math.BigInteger;
import plyworth.shared.structure.Layer;

/** A layer in the candidate graph, after all that may stand outside it. */
public final class CandidateNode {

  private final int number;
  private final int layerNumber;
  private final Layer layer;
  private final boolean ends;
  private final BigInteger completions;

  CandidateNode(int number, int layerNumber, Layer layer, boolean ends, BigInteger completions) {
    this.number = number;
    this.layerNumber = layerNumber;
    this.layer = layer;
    this.ends = ends;
    this.completions = completions;
  }

  /** Its place in the topological order, 0 for the outside; the same in the compiled graph. */
  public int number() {
    return number;
  }

  /** Its layer; null for the outside. */
  public Layer layer() {
    return layer;
  }

  /** Whether a candidate may end here. */
  public boolean ends() {
    return ends;
  }

  /** The number of candidates that continue from here, counting the one that ends here. */
  public BigInteger completions() {
    return completions;
  }

  /** The number of its layer in study order. */
  int layerNumber() {
    return layerNumber;
  }

  @Override
  public String toString() {
    return layer == null ? "outside" : layer.toString();
  }
}
