package plyworth.workbench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.Layer;

/** Candidates of one layer whose values are given: the figures 0 to 1 are worth themselves. */
public final class GivenValues extends ToyPlugin {

  private final double[][] values;

  private GivenValues(double[][] values) {
    super(
        "given",
        Collections.nCopies(values[0].length, Join.SUM),
        List.of(),
        List.of(),
        true,
        false);
    this.values = values;
  }

  /**
   * A study whose path numbers are the rows and whose criteria {@code given/c0} and so on are the
   * columns; NaN is unknown.
   */
  public static ToyStudy study(double[][] values) {
    return ToyStudy.of(ToyGraph.full(1, values.length), List.of(new GivenValues(values).bound()));
  }

  @Override
  public List<Criterion> criteria() {
    List<Criterion> criteria = new ArrayList<>();
    for (int c = 0; c < values[0].length; c++) {
      criteria.add(
          new Criterion(
              "c" + c,
              Text.of("c"),
              "",
              "",
              Criterion.Direction.HIGHER,
              ValueFunction.linear(0, 0, 1, 1),
              1,
              List.of(),
              Text.of("formula")));
    }
    return criteria;
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    double[] row = values[Integer.parseInt(layer.material().substring(3))];
    System.arraycopy(row, 0, state, 0, row.length);
  }
}
