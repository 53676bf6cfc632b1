package plyworth.shared.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTest {

  private static final List<String> HEADER = List.of("id", "figure");

  private static List<Csv.Row> read(String text) {
    return Csv.read(text, "t.csv", HEADER);
  }

  @Test
  void cellsAreReadByColumn() {
    List<Csv.Row> rows = read("id,figure\na, 1.5 \n\"b, \"\"c\"\"\",\n");
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0).number("figure")).isEqualTo(1.5);
    assertThat(rows.get(1).text("id")).isEqualTo("b, \"c\"");
    assertThat(rows.get(1).numberOrUnknown("figure")).isNaN();
  }

  @Test
  void otherColumnsAreRefused() {
    assertThatThrownBy(() -> read("id,value\na,1\n"))
        .isInstanceOf(DataException.class)
        .hasMessage("t.csv, line 1: the columns are id,value. They must be id,figure.");
  }

  @Test
  void wrongNumberOfCellsIsRefusedWithItsLine() {
    assertThatThrownBy(() -> read("id,figure\na,1\nb\n"))
        .hasMessageContaining("t.csv, line 3: the line has 1 cells");
    assertThatThrownBy(() -> read("id,figure\na,1,2\n")).hasMessageContaining("3 cells");
  }

  @Test
  void columnsThatMayFollowAreEmptyWhereTheyAreNot() {
    List<String> header = List.of("id", "figure");
    List<String> more = List.of("name", "note");
    for (String text : List.of("id,figure\na,1\n", "id,figure,name,note\na,1\n")) {
      Csv.Row row = Csv.read(text, "t.csv", header, more).get(0);
      assertThat(row.text("figure")).isEqualTo("1");
      assertThat(row.text("note")).isEmpty();
    }
    assertThat(
            Csv.read("id,figure,name,note\na,1,b,c\n", "t.csv", header, more).get(0).text("note"))
        .isEqualTo("c");
    assertThatThrownBy(() -> Csv.read("id,figure,name\na,1,b\n", "t.csv", header, more))
        .hasMessageContaining("They must be id,figure, or these and name,note.");
    assertThatThrownBy(() -> Csv.read("id,figure,name,note\na,1,b\n", "t.csv", header, more))
        .hasMessageContaining("the line has 3 cells");
  }

  @Test
  void whatIsNoFiniteNumberIsRefused() {
    for (String wrong : List.of("one", "NaN", "Infinity", "\"1,5\"", "")) {
      Csv.Row row = read("id,figure\na," + wrong + "\n").get(0);
      assertThatThrownBy(() -> row.number("figure"))
          .isInstanceOf(DataException.class)
          .hasMessageContaining("in column figure is not a number");
    }
  }

  @Test
  void emptyFileIsRefused() {
    assertThatThrownBy(() -> read("")).isInstanceOf(DataException.class);
  }
}
