package plyworth.workbench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.Layer;

/** Layers whose figures are drawn at random and add up; every value is linear in its figure. */
public final class AdditiveLayers extends ToyPlugin {

  private final int layers;
  private final int criteria;
  private final Map<String, double[]> figures = new TreeMap<>();

  private AdditiveLayers(ToyGraph toy, int criteria, long seed, double spread) {
    super("sums", Collections.nCopies(criteria, Join.SUM), List.of(), List.of(), true, false);
    layers = toy.positions().size();
    this.criteria = criteria;
    SplittableRandom random = new SplittableRandom(seed);
    for (List<Layer> position : toy.positions()) {
      for (Layer layer : position) {
        double[] own = random.doubles(criteria).map(d -> 0.5 + spread * (d - 0.5)).toArray();
        figures.put(layer.material(), own);
      }
    }
  }

  /**
   * A plugin for the layers of a graph.
   *
   * @param criteria their number; {@code sums/c0} and so on
   */
  public static AdditiveLayers of(ToyGraph toy, int criteria, long seed) {
    return new AdditiveLayers(toy, criteria, seed, 1);
  }

  /**
   * The same, full of near ties.
   *
   * @param spread by how much the figures of two layers differ at most
   */
  public static AdditiveLayers near(ToyGraph toy, int criteria, long seed, double spread) {
    return new AdditiveLayers(toy, criteria, seed, spread);
  }

  /** The figures of a layer, 0 to 1, one for each criterion. */
  public double[] figures(Layer layer) {
    return figures.get(layer.material()).clone();
  }

  @Override
  public List<Criterion> criteria() {
    List<Criterion> all = new ArrayList<>();
    for (int c = 0; c < criteria; c++) {
      all.add(
          new Criterion(
              "c" + c,
              Text.of("c"),
              "",
              "",
              Criterion.Direction.HIGHER,
              ValueFunction.linear(0, 0, layers, 1),
              1,
              List.of(),
              Text.of("formula")));
    }
    return all;
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return List.of();
  }

  @Override
  public OptionalInt sumOf(String criterion) {
    return OptionalInt.of(Integer.parseInt(criterion.substring(1)));
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    System.arraycopy(figures.get(layer.material()), 0, state, 0, criteria);
  }

  @Override
  public void finish(Block block) {
    for (int c = 0; c < criteria; c++) {
      System.arraycopy(block.states[c], 0, block.low[c], 0, block.size);
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    for (int c = 0; c < criteria; c++) {
      System.arraycopy(block.stateLow[c], 0, block.low[c], 0, block.size);
      System.arraycopy(block.stateHigh[c], 0, block.high[c], 0, block.size);
    }
  }
}
