package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The table that stands for a chart. */
class ChartTableTest {

  private static final List<ChartTable.Column> COLUMNS =
      List.of(ChartTable.Column.words("structure"), ChartTable.Column.figures("cost, EUR"));

  @Test
  void itIsPastedAsLinesOfCellsWithTabs() {
    ChartTable table = new ChartTable(COLUMNS, List.of(List.of("paper\t/ foil", "12.3")));
    assertThat(table.tabbed()).isEqualTo("structure\tcost, EUR\npaper / foil\t12.3\n");
  }

  @Test
  void aRowThatDoesNotFitIsRefused() {
    assertThatThrownBy(() -> new ChartTable(COLUMNS, List.of(List.of("paper"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 cells under 2 headings");
  }
}
