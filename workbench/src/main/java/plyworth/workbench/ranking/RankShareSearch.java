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
 * <p>The weights are divided into simplices, halved again and again. In each of them the best at
 * its middle say, corner by corner, what a candidate has to reach: one that falls short of all of
 * them at every corner falls short under every weight in between, and so does everything in smaller
 * cells. The few that are left are ranked under each of the weights.
 */
final class RankShareSearch {

  /** More than rounding can be, in a value of at most 1. */
  private static final double ROUNDING = 1e-9;

  /** With so few samples in a cell it costs less to rank under each than to divide on. */
  private static final int FEW_SAMPLES = 12;

  /** With so few candidates likewise. */
  private static final int FEW_ROWS = 64;

  /** Candidates looked at one by one once the zones that may matter hold no more than these. */
  private static final int ZONES = (1 << 18) / Chunk.ZONE;

  /** Zones whose rows are looked at together. */
  private static final int BATCH = 256;

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
    return zones(WeightCell.around(weights), zones(), none());
  }

  private ValueColumns none() {
    return new ValueColumns(new double[criteria.length][0], new long[0]);
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

  /** Goes on with zones while they are many, and with their rows from then on. */
  private RankTally zones(WeightCell cell, ValueColumns zones, ValueColumns known) {
    goOn();
    ValueColumns best = bestOf(zones, cell.mean(), known);
    double[] floors = floors(cell, best);
    ValueColumns left = zones.reaching(cell.corners(), floors);
    return left.size() > ZONES && cell.samples().size() > FEW_SAMPLES && cell.divisible()
        ? divided(cell, half -> zones(half, left, best))
        : rows(cell, rowsReaching(cell.corners(), floors, left));
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
        : Arrays.stream(best.under(weights)).min().orElseThrow() - ROUNDING;
  }

  /** The best candidates of some zones under some weights; what is known says where not to look. */
  private ValueColumns bestOf(ValueColumns zones, double[] weights, ValueColumns known) {
    double[] sums = zones.under(weights);
    double[] floor = {floor(known, weights)};
    List<ValueColumns> best = new ArrayList<>(List.of(none()));
    IntStream.range(0, sums.length)
        .filter(zone -> sums[zone] >= floor[0])
        .boxed()
        .sorted(Comparator.comparingDouble((Integer zone) -> -sums[zone]))
        .takeWhile(zone -> sums[zone] >= floor[0])
        .forEachOrdered(
            zone -> {
              best.set(0, together(best.get(0), rowsOf(zones.id(zone))).best(k, weights));
              floor[0] = Math.max(floor[0], floor(best.get(0), weights));
            });
    return best.get(0);
  }

  private ValueColumns together(ValueColumns... parts) {
    return ValueColumns.together(criteria.length, List.of(parts));
  }

  private ValueColumns rowsReaching(double[][] corners, double[] floors, ValueColumns zones) {
    List<ValueColumns> reaching = new ArrayList<>();
    for (int from = 0; from < zones.size(); from += BATCH) {
      int to = Math.min(zones.size(), from + BATCH);
      ValueColumns[] batch =
          IntStream.range(from, to)
              .mapToObj(zone -> rowsOf(zones.id(zone)))
              .toArray(ValueColumns[]::new);
      reaching.add(together(batch).reaching(corners, floors));
    }
    return together(reaching.toArray(ValueColumns[]::new));
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
      double floor = floor(best, sample.weights());
      int[] first =
          IntStream.range(0, sums.length)
              .filter(row -> sums[row] >= floor)
              .boxed()
              .sorted(Comparator.comparingDouble(row -> -sums[row]))
              .mapToInt(row -> row)
              .toArray();
      tally.count(
          sample.weights(),
          Arrays.stream(first).mapToLong(rows::id).toArray(),
          Arrays.stream(first).mapToDouble(row -> sums[row]).toArray());
    }
    progress.scored(counted.addAndGet(cell.samples().size()), samples);
    return tally;
  }
}
