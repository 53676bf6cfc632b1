package plyworth.workbench.speed;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The candidates of an additive study as a table of DuckDB, in memory. */
final class SqlCandidates implements AutoCloseable {

  private final Connection connection;
  private final PreparedStatement best;

  private SqlCandidates(Connection connection, PreparedStatement best) {
    this.connection = connection;
    this.best = best;
  }

  /** Joins all materials of every layer with those of the next. */
  static SqlCandidates of(AdditiveStudy study) throws SQLException {
    Connection connection = DriverManager.getConnection("jdbc:duckdb:");
    int layers = study.figures().size();
    try (Statement statement = connection.createStatement()) {
      for (int p = 0; p < layers; p++) {
        layer(statement, p, study.figures().get(p));
      }
      statement.execute(
          "create table candidates as select "
              + listed(c -> sum(c, layers))
              + " from "
              + IntStream.range(0, layers)
                  .mapToObj(p -> "l" + p)
                  .collect(Collectors.joining(", ")));
    }
    String value =
        IntStream.range(0, AdditiveStudy.CRITERIA)
            .mapToObj(c -> "? * c" + c)
            .collect(Collectors.joining(" + "));
    return new SqlCandidates(
        connection,
        connection.prepareStatement(
            "select ("
                + value
                + ") / "
                + layers
                + " as value from candidates"
                + " order by value desc limit ?"));
  }

  private static void layer(Statement statement, int position, List<double[]> materials)
      throws SQLException {
    statement.execute("create table l" + position + " (" + listed(c -> "c" + c + " double") + ")");
    for (double[] own : materials) {
      String values =
          DoubleStream.of(own).mapToObj(Double::toString).collect(Collectors.joining(", "));
      statement.execute("insert into l" + position + " values (" + values + ")");
    }
  }

  private static String sum(int criterion, int layers) {
    return IntStream.range(0, layers)
        .mapToObj(p -> "l" + p + ".c" + criterion)
        .collect(Collectors.joining(" + ", "cast(", " as real) as c" + criterion));
  }

  private static String listed(IntFunction<String> column) {
    return IntStream.range(0, AdditiveStudy.CRITERIA)
        .mapToObj(column)
        .collect(Collectors.joining(", "));
  }

  /** The highest values, highest first. */
  double[] best(double[] weights, int k) throws SQLException {
    for (int c = 0; c < weights.length; c++) {
      best.setDouble(c + 1, weights[c]);
    }
    best.setInt(weights.length + 1, k);
    double[] values = new double[k];
    try (ResultSet rows = best.executeQuery()) {
      for (int i = 0; i < k && rows.next(); i++) {
        values[i] = rows.getDouble(1);
      }
    }
    return values;
  }

  @Override
  public void close() throws SQLException {
    best.close();
    connection.close();
  }
}
