package plyworth.shared.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.data.Resources;

/** The schema beside the code against written studies, by an independent validator. */
class StudySchemaTest {

  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(Resources.text(StudyFile.class, "study.schema.json"));

  private static List<String> complaints(String text) {
    return SCHEMA.validate(text, InputFormat.JSON).stream().map(m -> m.getMessage()).toList();
  }

  @Test
  void writtenStudiesAreValid() {
    assertThat(complaints(StudyFile.write(SampleStudies.sugar()))).isEmpty();
    LongStream.range(0, 10)
        .mapToObj(SampleStudies::random)
        .forEach(study -> assertThat(complaints(StudyFile.write(study))).isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"schema\": 6               | \"schema\": 9",
        "\"spoilt_by\": \"moistening\" | \"spoilt_by\": \"damp\"",
        "\"mass_g\": 4               | \"mass_kg\": 0.004",
        "\"mass_g\": 4               | \"mass_g\": -4",
        "\"form\": \"crystals\"      | \"form\": \"crystal\"",
        "\"barrier/otr\": 2          | \"otr\": 2",
        "\"bound\": \"at-most\"      | \"bound\": \"below\"",
        "\"handling\": \"shipped\"  | \"handling\": \"posted\"",
        "\"name\": \"23 °C 50 % RH\", | ",
        "\"barrier/otr\": 100        | \"barrier/otr\": 101",
        "\"barrier/wvtr\": 62.5      | \"wvtr\": 62.5",
        "\"swing_points\":           | \"points\":",
        "\"order\":                  | \"weights\": { }, \"order\":",
        "\"spread\": 1.5             | \"spread\": 0.5",
        "\"samples\": 5              | \"samples\": 0",
        "\"setup_EUR\": 600        | \"setup_EUR\": -600",
        "\"setup_EUR\": 600,       | ",
        "\"solvents\": false       | \"solvents\": \"no\"",
        "\"lead_days\": 42         | \"lead_weeks\": 6",
        "\"minimum_order_kg\": 3000 | \"minimum_order_m2\": 1, \"minimum_order_kg\": 3",
        "\"6.35 to 12 um\"         | \"6.35-12um\"",
        "\"id\": \"slitter\"      | \"id\": \"The Slitter\"",
        "\"seed\": 2026            | \"seed\": 20.5",
        "\"question\":               | \"qustion\":",
        "\"scale\": \"logarithmic\"  | \"scale\": \"log\""
      })
  void whatTheReaderRefusesTheSchemaRefuses(String right, String with) {
    String wrong = with == null ? "" : with;
    String text = StudyFile.write(SampleStudies.sugar());
    assertThat(text).contains(right);
    String spoilt = text.replace(right, wrong);
    assertThat(complaints(spoilt)).isNotEmpty();
    assertThat(ReadingFailure.of(spoilt)).isNotNull();
  }
}
