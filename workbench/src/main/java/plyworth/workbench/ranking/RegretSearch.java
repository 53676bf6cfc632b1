package plyworth.workbench.ranking;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/**
 * Finds the candidate whose greatest loss under several value models is the smallest, passing over
 * chunks and zones whose best corner already loses more than the best candidate found so far.
 */
final class RegretSearch {

  private final CandidateTable table;
  private final Groups groups;
  private final ValueBounds bounds;
  private final ExactScores exact;
  private final List<ValueModel> models;
  private final double[] best;
  private final List<RowValues> values;
  private Optional<Regret> least = Optional.empty();

  /**
   * A search.
   *
   * @param models value models that differ in weights alone
   * @param best the highest value under each of them
   */
  RegretSearch(
      CandidateTable table,
      Groups groups,
      ValueBounds bounds,
      ExactScores exact,
      List<ValueModel> models,
      double[] best) {
    this.table = table;
    this.groups = groups;
    this.bounds = bounds;
    this.exact = exact;
    this.models = models;
    this.best = best;
    values = models.stream().map(RowValues::new).toList();
  }

  /** The candidate, on equal losses that of the lower path number; empty when none is ranked. */
  Optional<Regret> run() {
    double[][] highest = models.stream().map(bounds::whole).toArray(double[][]::new);
    double[] corners =
        IntStream.range(0, table.chunks()).mapToDouble(i -> greatest(highest, i)).toArray();
    IntStream.range(0, corners.length)
        .boxed()
        .sorted(Comparator.comparingDouble(chunk -> corners[chunk]))
        .filter(chunk -> admits(corners[chunk], (long) chunk * Chunk.ROWS))
        .forEachOrdered(this::chunk);
    return least;
  }

  private double greatest(double[][] sums, int place) {
    double greatest = 0;
    for (int m = 0; m < best.length; m++) {
      greatest = Math.max(greatest, best[m] - sums[m][place]);
    }
    return greatest;
  }

  private boolean admits(double loss, long path) {
    return least
        .map(l -> loss < l.greatest() || loss == l.greatest() && path < l.path())
        .orElse(true);
  }

  private void chunk(int index) {
    double[][] corners =
        models.stream().map(model -> bounds.highest(model, index)).toArray(double[][]::new);
    for (int zone = 0; zone < corners[0].length; zone++) {
      if (admits(greatest(corners, zone), (long) index * Chunk.ROWS + (long) zone * Chunk.ZONE)) {
        zone(index, zone);
      }
    }
  }

  private void zone(int index, int zone) {
    Chunk chunk = table.chunk(index);
    int from = zone * Chunk.ZONE;
    int to = Math.min(chunk.size(), from + Chunk.ZONE);
    long path = (long) index * Chunk.ROWS + from;
    IntFunction<ZoneRows> rows = onceEach(c -> bounds.of(c).rows(index, zone));
    values.forEach(v -> v.compute(rows));
    double[][] worst = values.stream().map(v -> v.worst).toArray(double[][]::new);
    double[][] optimistic = values.stream().map(v -> v.best).toArray(double[][]::new);
    for (int row = from; row < to; row++) {
      int group = groups.of(index)[row];
      double loss = greatest(optimistic, row - from);
      if (group <= Group.OPEN.ordinal() && admits(loss, path + row - from)) {
        boolean known = group == Group.RANKED.ordinal() && loss == greatest(worst, row - from);
        take(path + row - from, known ? loss : refined(path + row - from));
      }
    }
  }

  /** The models ask for the values by the same criteria. */
  private static IntFunction<ZoneRows> onceEach(IntFunction<ZoneRows> byCriterion) {
    Map<Integer, ZoneRows> asked = new HashMap<>();
    return c -> asked.computeIfAbsent(c, byCriterion::apply);
  }

  private void take(long path, double loss) {
    if (admits(loss, path)) {
      least = Optional.of(new Regret(path, loss));
    }
  }

  /** The loss by full figures; infinite when a limit turns out to exclude the candidate. */
  private double refined(long path) {
    double[] figures = exact.figures(path);
    if (models.get(0).group(figures, false) != Group.RANKED) {
      return Double.POSITIVE_INFINITY;
    }
    double[][] sums =
        models.stream()
            .map(model -> new double[] {model.value(figures).value()})
            .toArray(double[][]::new);
    return greatest(sums, 0);
  }
}
