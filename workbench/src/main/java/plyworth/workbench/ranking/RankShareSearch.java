package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Progress;

/**
 * Counts under how many weights each candidate of a table comes first and among the first few, as
 * if all of them were ranked under every one.
 *
 * <p>What enough others beat under all the weights is left out first. The weights are then divided
 * into simplices, halved again and again. In each of them the best at its middle say, corner by
 * corner, what a candidate has to reach: one that falls short of all of them at every corner falls
 * short under every weight in between, and so does everything in smaller cells. The few that are
 * left are ranked under each of the weights.
 */
final class RankShareSearch {

  /** With so few samples in a cell it costs less to rank under each than to divide on. */
  private static final int FEW_SAMPLES = 24;

  /** With so few candidates likewise. */
  private static final int FEW_ROWS = 64;

  /** Zones whose rows are looked at together. */
  private static final int BATCH = 32;

  /** Shares of the zones that are looked at by one thread each. */
  private static final int SHARES = 4;

  private static final int PER_CHUNK = Chunk.ROWS / Chunk.ZONE;

  private final CandidateTable table;
  private final Groups groups;
  private final ValueBounds bounds;
  private final int[] criteria;
  private final int k;
  private final Progress progress;
  private final AtomicLong counted = new AtomicLong();
  private long samples;

  /**
   * A search.
   *
   * @param criteria the criteria that count
   * @param k how many the first few are
   */
  RankShareSearch(
      CandidateTable table,
      Groups groups,
      ValueBounds bounds,
      int[] criteria,
      int k,
      Progress progress) {
    this.table = table;
    this.groups = groups;
    this.bounds = bounds;
    this.criteria = criteria;
    this.k = k;
    this.progress = progress;
  }

  /**
   * The shares of the candidates that are among the first few at all.
   *
   * @param weights one for each criterion that counts
   * @throws CancellationException when cancelled
   */
  RankTally run(double[][] weights) {
    samples = weights.length;
    WeightCell cell = WeightCell.around(weights);
    return rows(cell, promising(cell));
  }

  /** The zones with ranked candidates at their best. */
  private ValueColumns zones() {
    long[] ids =
        IntStream.range(0, table.chunks())
            .flatMap(
                chunk -> {
                  int[] ranked = groups.rankedPerZone(chunk);
                  return IntStream.range(0, ranked.length)
                      .filter(zone -> ranked[zone] > 0)
                      .map(zone -> chunk * PER_CHUNK + zone);
                })
            .asLongStream()
            .toArray();
    double[][] values = new double[criteria.length][ids.length];
    for (int i = 0; i < criteria.length; i++) {
      CriterionValues of = bounds.of(criteria[i]);
      for (int zone = 0; zone < ids.length; zone++) {
        values[i][zone] = of.highest((int) (ids[zone] / PER_CHUNK))[(int) (ids[zone] % PER_CHUNK)];
      }
    }
    return new ValueColumns(values, ids);
  }

  private RankTally rows(WeightCell cell, ValueColumns rows) {
    goOn();
    ValueColumns best = rows.best(k, cell.mean());
    ValueColumns left = rows.reaching(cell.corners(), floors(cell, best));
    return cell.samples().size() > FEW_SAMPLES && left.size() > FEW_ROWS && cell.divisible()
        ? divided(cell, half -> rows(half, left))
        : ranked(cell, left, best);
  }

  private void goOn() {
    if (progress.cancelled()) {
      throw new CancellationException();
    }
  }

  /** Joined in the order of the cells, so that sums don't depend on which thread is faster. */
  private static RankTally divided(WeightCell cell, Function<WeightCell, RankTally> tally) {
    return cell.halves().stream().parallel().map(tally).reduce(RankTally::plus).orElseThrow();
  }

  /** By corner, what none of the best falls short of; nothing where they are fewer than wanted. */
  private double[] floors(WeightCell cell, ValueColumns best) {
    return Arrays.stream(cell.corners()).mapToDouble(corner -> floor(best, corner)).toArray();
  }

  private double floor(ValueColumns best, double[] weights) {
    return best.size() < k
        ? Double.NEGATIVE_INFINITY
        : Arrays.stream(best.under(weights)).min().orElseThrow() - Skyband.LEVEL;
  }

  /** The candidates that may be among the first few anywhere in a cell. */
  private ValueColumns promising(WeightCell cell) {
    ValueColumns zones = zones();
    double[] sums = zones.under(cell.mean());
    int[] order =
        IntStream.range(0, sums.length)
            .boxed()
            .sorted(Comparator.comparingDouble(zone -> -sums[zone]))
            .mapToInt(zone -> zone)
            .toArray();
    Skyband all = new Skyband(k, cell.corners(), cell.mean());
    IntStream.range(0, SHARES)
        .parallel()
        .mapToObj(share -> promising(cell, zones, order, share))
        .toList()
        .forEach(all::offer);
    return all.members();
  }

  /** Those of one share of the zones, the best zones first. */
  private ValueColumns promising(WeightCell cell, ValueColumns zones, int[] order, int share) {
    Skyband skyband = new Skyband(k, cell.corners(), cell.mean());
    for (int from = share * BATCH; from < order.length; from += SHARES * BATCH) {
      goOn();
      int to = Math.min(order.length, from + BATCH);
      ValueColumns batch = zones.only(Arrays.copyOfRange(order, from, to));
      skyband.offer(rowsOf(batch.only(skyband.notBeaten(batch))));
    }
    return skyband.members();
  }

  private ValueColumns rowsOf(ValueColumns zones) {
    List<ValueColumns> rows = new ArrayList<>();
    for (int zone = 0; zone < zones.size(); zone++) {
      rows.add(rowsOf(zones.id(zone)));
    }
    return ValueColumns.together(criteria.length, rows);
  }

  /** The ranked candidates of a zone. */
  private ValueColumns rowsOf(long id) {
    int chunk = (int) (id / PER_CHUNK);
    int zone = (int) (id % PER_CHUNK);
    int from = zone * Chunk.ZONE;
    byte[] group = groups.of(chunk);
    int size = Math.min(Chunk.ZONE, group.length - from);
    double[][] values = new double[criteria.length][];
    for (int i = 0; i < values.length; i++) {
      values[i] = bounds.of(criteria[i]).rows(chunk, zone).worst();
    }
    long first = (long) chunk * Chunk.ROWS + from;
    ValueColumns all = new ValueColumns(values, LongStream.range(first, first + size).toArray());
    return all.only(
        IntStream.range(0, size)
            .filter(row -> group[from + row] == Group.RANKED.ordinal())
            .toArray());
  }

  /** Ranks what is left under every sample of a cell. */
  private RankTally ranked(WeightCell cell, ValueColumns rows, ValueColumns best) {
    RankTally tally = new RankTally(k);
    for (WeightCell.Sample sample : cell.samples()) {
      double[] sums = rows.under(sample.weights());
      int[] first = reaching(sums, floor(best, sample.weights()));
      long[] paths = new long[first.length];
      double[] values = new double[first.length];
      for (int i = 0; i < first.length; i++) {
        paths[i] = rows.id(first[i]);
        values[i] = sums[first[i]];
      }
      tally.count(sample.weights(), paths, values);
    }
    progress.scored(counted.addAndGet(cell.samples().size()), samples);
    return tally;
  }

  private static int[] reaching(double[] sums, double floor) {
    int[] rows = new int[sums.length];
    int count = 0;
    for (int row = 0; row < sums.length; row++) {
      rows[count] = row;
      count += sums[row] >= floor ? 1 : 0;
    }
    return Arrays.copyOf(rows, count);
  }
}
