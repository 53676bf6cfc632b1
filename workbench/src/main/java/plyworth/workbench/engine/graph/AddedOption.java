package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;

/**
 * An option that a position does not offer yet.
 *
 * @param position index of the position, from the outside in
 * @param option the option
 */
public record AddedOption(int position, Option option) {

  /**
   * The smallest additions by which the positions offer a structure; none when they already do.
   *
   * <p>The layers are cut into one run for each position, and what a position does not offer is
   * added there: fewest layers in all, <i>nothing</i> counted as one; then fewest options of
   * another make than the position offers, that is put down by other processes; then fewest
   * options; then the outermost layers to the outermost positions.
   */
  public static List<AddedOption> smallest(Structure structure, List<Position> positions) {
    return new Cuts(structure.layers(), positions).smallest();
  }

  /** What an option costs at a position: layers, then strangeness, then options. */
  static long cost(Position position, Option option) {
    if (position.options().contains(option)) {
      return 0;
    }
    boolean strange =
        !option.layers().isEmpty()
            && position.options().stream().noneMatch(o -> make(o).equals(make(option)));
    return (long) Math.max(1, option.layers().size()) << 40 | (strange ? 1L << 20 : 0) | 1;
  }

  private static List<String> make(Option option) {
    return option.layers().stream().map(Layer::process).toList();
  }

  /** Dynamic programming over positions and layers, from the inside out. */
  private static final class Cuts {
    private static final long NEVER = Long.MAX_VALUE / 2;

    private final List<Layer> layers;
    private final List<Position> positions;
    private final long[][] costs;
    private final int[][] ends;

    Cuts(List<Layer> layers, List<Position> positions) {
      this.layers = layers;
      this.positions = positions;
      costs = new long[positions.size() + 1][layers.size() + 1];
      ends = new int[positions.size()][layers.size() + 1];
      for (int i = 0; i < layers.size(); i++) {
        costs[positions.size()][i] = NEVER;
      }
      for (int p = positions.size() - 1; p >= 0; p--) {
        for (int i = 0; i <= layers.size(); i++) {
          cut(p, i);
        }
      }
    }

    /** Finds how many of the layers from one on stand best at a position. */
    private void cut(int position, int from) {
      costs[position][from] = NEVER;
      for (int end = layers.size(); end >= from; end--) {
        long cost = cost(positions.get(position), run(from, end)) + costs[position + 1][end];
        if (cost < costs[position][from]) {
          costs[position][from] = cost;
          ends[position][from] = end;
        }
      }
    }

    private Option run(int from, int end) {
      return new Option(layers.subList(from, end));
    }

    List<AddedOption> smallest() {
      List<AddedOption> added = new ArrayList<>();
      int from = 0;
      for (int p = 0; p < positions.size(); p++) {
        Option run = run(from, ends[p][from]);
        if (!positions.get(p).options().contains(run)) {
          added.add(new AddedOption(p, run));
        }
        from = ends[p][from];
      }
      return List.copyOf(added);
    }
  }
}
