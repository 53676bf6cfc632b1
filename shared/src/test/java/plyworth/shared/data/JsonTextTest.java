package plyworth.shared.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {

  private static Json read(String text) {
    return JsonText.read(text, "t.json");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\": 1, \"a\": 2}|Duplicate field 'a'. Remove one of the two.",
        "{\"a\": 1} 2|text follows the end of the value",
        "{\"a\": 1|the file ends before the value is complete",
        "[1, 2|the file ends before the value is complete",
        "\"abc|the file ends before the value is complete",
        "{\"a\": NaN}|NaN and Infinity are not JSON",
        "{\"a\": -Infinity}|NaN and Infinity are not JSON",
        "{\"a\": 1e999}|1e999 is too large for a number",
        "{\"a\": 01}|not readable as JSON",
        "{\"a\": 1,}|not readable as JSON",
        "// no|not readable as JSON",
        "{a: 1}|not readable as JSON",
        "' '|not readable as JSON"
      })
  void whatIsNoStrictJsonIsRefused(String text, String problem) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(DataException.class)
        .hasMessageStartingWith("t.json, line 1")
        .hasMessageContaining(problem);
  }

  @Test
  void whatCannotBeReadIsNamedByTheKeysThatLeadThere() {
    assertThatThrownBy(() -> read("{\"a\": {\"b\": [1, {\"c\": 2}, NaN]}}"))
        .hasMessageContaining("at a.b[2]: NaN");
    assertThatThrownBy(() -> read("{\"a\": {\"b\": 1, \"b\": 2}}"))
        .hasMessageContaining("at a: not");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n"})
  void emptyFileIsRefused(String text) {
    assertThatThrownBy(() -> read(text)).hasMessage("t.json: the file is empty. Restore the file.");
  }

  @Test
  void deepNestingIsRefused() {
    assertThatThrownBy(() -> read("[".repeat(60) + "]".repeat(60)))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("nesting");
  }

  @Test
  void everyValueKnowsItsPlace() {
    Json.Obj object = (Json.Obj) read("{\n  \"a\": [ 1,\n    {\"b\": true} ]\n}");
    Json.Arr array = (Json.Arr) object.entries().get("a");
    Json.Obj inner = (Json.Obj) array.items().get(1);
    assertThat(inner.entries().get("b").place()).isEqualTo(new Place("t.json", 3, 11, "a[1].b"));
    assertThat(inner.entries().get("b").place())
        .hasToString("t.json, line 3, column 11, at a[1].b");
  }

  @Test
  void printedTextIsReadBackAndPrintedAlike() {
    Json json =
        Json.of(
            Map.of(
                "numbers",
                Json.of(
                    List.of(
                        Json.of(0.1), Json.of(1e300), Json.of(5e-324), Json.of(-7), Json.of(1e15))),
                "unknown",
                Json.of(Double.NaN),
                "text",
                Json.of("\"µ\" \\ \n ü \u2028"),
                "flag",
                Json.of(false)));
    String text = JsonPrint.text(json);
    assertThat(JsonPrint.text(read(text))).isEqualTo(text).endsWith("\n");
    assertThat(text).contains("\"unknown\": null").contains("0.1, 1.0E300, 4.9E-324, -7, 1.0E15");
  }

  @Test
  void shortPlainListStandsOnOneLine() {
    Json list = Json.of(List.of(Json.of(1), Json.of("b")));
    assertThat(JsonPrint.text(list)).isEqualTo("[ 1, \"b\" ]\n");
    assertThat(JsonPrint.text(Json.of(List.of(list)))).isEqualTo("[\n  [ 1, \"b\" ]\n]\n");
    assertThat(JsonPrint.text(Json.of(List.of(Json.of("x".repeat(90))))).lines()).hasSize(3);
  }
}
