package plyworth.shared.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.structure.Side;

class FieldsTest {

  private static Fields fields(String text) {
    return Fields.of(JsonText.read(text, "t.json"));
  }

  @Test
  void absentAndNullAreUnknown() {
    Fields fields = fields("{\"a\": null, \"b\": 2}");
    assertThat(fields.numberOrUnknown("a")).isNaN();
    assertThat(fields.numberOrUnknown("c")).isNaN();
    assertThat(fields.numberOrUnknown("b")).isEqualTo(2);
    assertThat(fields.text("a", "otherwise")).isEqualTo("otherwise");
    assertThat(fields.list("c", Fields::text)).isEmpty();
    assertThat(fields.map("c", Fields::text)).isEmpty();
  }

  @Test
  void keyNobodyAskedForIsRefusedWithTheNearest() {
    Fields fields = fields("{\"title\": \"x\", \"noets\": \"y\"}");
    fields.text("title");
    fields.has("notes");
    assertThatThrownBy(fields::done)
        .isInstanceOf(DataException.class)
        .hasMessage(
            "t.json, line 1, column 25, at noets: the key \"noets\" is not known here. "
                + "Did you mean \"notes\"?");
  }

  @Test
  void missingKeyNamesTheOneThatMayStandInItsPlace() {
    assertThatThrownBy(() -> fields("{\"mass_kg\": 1}").number("mass_g"))
        .hasMessageContaining("the key \"mass_g\" is missing. Is \"mass_kg\" meant to be it?");
    assertThatThrownBy(() -> fields("{}").number("mass_g")).hasMessageContaining("Add it.");
  }

  @ParameterizedTest
  @CsvSource({
    "[1],found a list",
    "true,found true or false",
    "null,found null",
    "{},found an object",
    "7,found a number"
  })
  void otherKindIsRefused(String json, String found) {
    assertThatThrownBy(() -> fields("{\"a\": " + json + "}").text("a"))
        .hasMessageContaining(found + " where a text in quotes is due");
  }

  @Test
  void choiceIsWrittenInLowerCaseWithHyphens() {
    assertThat(fields("{\"a\": \"metal-in\"}").choice("a", Side.class)).isEqualTo(Side.METAL_IN);
    assertThatThrownBy(() -> fields("{\"a\": \"METAL_IN\"}").choice("a", Side.class))
        .isInstanceOf(DataException.class);
  }

  @Test
  void whatAReaderRefusesIsSaidWithThePlaceOfTheItem() {
    assertThatThrownBy(
            () ->
                fields("{\"a\": [ 1,\n 2 ]}")
                    .list("a", item -> refuse(Fields.number(item) > 1, "2 is too many")))
        .isInstanceOf(DataException.class)
        .hasMessage("t.json, line 2, column 2, at a[1]: 2 is too many");
  }

  private static int refuse(boolean when, String message) {
    if (when) {
      throw new IllegalArgumentException(message);
    }
    return 0;
  }

  @Test
  void mapKeepsItsOrder() {
    Map<String, Double> map = fields("{\"a\": {\"z\": 1, \"b\": 2}}").map("a", Fields::number);
    assertThat(List.copyOf(map.keySet())).containsExactly("z", "b");
  }
}
