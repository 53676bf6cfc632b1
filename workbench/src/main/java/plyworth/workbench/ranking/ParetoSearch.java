package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/**
 * Finds the Pareto front by keeping the candidates that nothing seen so far beats, and passing over
 * zones whose best corner is beaten.
 */
final class ParetoSearch {

  private record Member(long path, double[] values) {}

  private final CandidateTable table;
  private final Groups groups;
  private final ValueBounds bounds;
  private final ValueModel model;
  private final int[] criteria;
  private final int cap;
  private final List<Member> front = new ArrayList<>();

  private ParetoSearch(
      CandidateTable table, Groups groups, ValueBounds bounds, ValueModel model, int cap) {
    this.table = table;
    this.groups = groups;
    this.bounds = bounds;
    this.model = model;
    this.cap = cap;
    criteria = Weights.counting(model);
  }

  static ParetoFront of(
      CandidateTable table, Groups groups, ValueBounds bounds, ValueModel model, int cap) {
    ParetoSearch search = new ParetoSearch(table, groups, bounds, model, cap);
    boolean complete = search.run();
    List<Long> paths = search.front.stream().map(Member::path).sorted().toList();
    return new ParetoFront(paths, complete, cap);
  }

  private boolean run() {
    double[] whole = bounds.whole(model);
    List<Integer> promising =
        IntStream.range(0, table.chunks())
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> -whole[i]))
            .toList();
    for (int index : promising) {
      if (!beaten(corner(c -> bounds.of(c).whole()[index])) && !chunk(index)) {
        return false;
      }
    }
    return true;
  }

  private boolean chunk(int index) {
    int[] ranked = groups.rankedPerZone(index);
    for (int z = 0; z < ranked.length; z++) {
      int zone = z;
      if (ranked[zone] > 0 && !beaten(corner(c -> bounds.of(c).highest(index)[zone]))) {
        zone(index, zone);
        if (front.size() > cap) {
          return false;
        }
      }
    }
    return true;
  }

  private void zone(int index, int zone) {
    Chunk chunk = table.chunk(index);
    byte[] group = groups.of(index);
    int to = Math.min(chunk.size(), (zone + 1) * Chunk.ZONE);
    for (int row = zone * Chunk.ZONE; row < to; row++) {
      if (group[row] == Group.RANKED.ordinal()) {
        double[] values = values(chunk, row);
        if (!beaten(values)) {
          front.removeIf(member -> beats(values, member.values()));
          front.add(new Member((long) index * Chunk.ROWS + row, values));
        }
      }
    }
  }

  private double[] corner(IntToDoubleFunction highest) {
    return IntStream.of(criteria).mapToDouble(highest).toArray();
  }

  private double[] values(Chunk chunk, int row) {
    double[] values = new double[criteria.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = bounds.of(criteria[i]).worst(chunk, row);
    }
    return values;
  }

  /** Whether a member beats these values; what beats one often beats the next, so it moves up. */
  private boolean beaten(double[] values) {
    for (int i = 0; i < front.size(); i++) {
      Member member = front.get(i);
      if (beats(member.values(), values)) {
        front.set(i, front.get(0));
        front.set(0, member);
        return true;
      }
    }
    return false;
  }

  private static boolean beats(double[] a, double[] b) {
    boolean better = false;
    for (int i = 0; i < a.length; i++) {
      if (a[i] < b[i]) {
        return false;
      }
      better |= a[i] > b[i];
    }
    return better;
  }
}
