package plyworth.shared.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.brief.Climate;
import plyworth.shared.data.DataException;

/** The forms of a climate in a study file, and what a spoilt one is answered with. */
class ClimateFormsTest {

  private static final String CONSTANT =
      "{ \"name\": \"23 °C 50 % RH\", \"temperature_C\": 23, \"humidity_percent\": 50 }";

  private static final String MONTH = "{ \"temperature_C\": 20, \"humidity_percent\": 60 }";

  private static final String SEASONS =
      "{ \"name\": \"two\", \"seasons\": [ { \"days\": 90, \"temperature_C\": 30,"
          + " \"humidity_percent\": 75 }, { \"days\": 275, \"temperature_C\": 25,"
          + " \"humidity_percent\": 60 } ] }";

  private static String study(String climate) {
    String sound = StudyFile.write(SampleStudies.sugar());
    assertThat(sound).contains(CONSTANT);
    return sound.replace(CONSTANT, climate);
  }

  private static Climate read(String climate) {
    return StudyFile.read(study(climate), "sugar.study.json").brief().climate();
  }

  private static String writtenAgain(String climate) {
    return StudyFile.write(StudyFile.read(study(climate), "sugar.study.json"));
  }

  private static String months(int count) {
    return "{ \"name\": \"year\", \"months\": [ "
        + MONTH
        + (", " + MONTH).repeat(count - 1)
        + " ] }";
  }

  @ParameterizedTest
  @ValueSource(strings = {"I", "II", "III", "IVa", "IVb", "accelerated"})
  void aZoneStaysAZone(String zone) {
    String climate = "{ \"zone\": \"" + zone + "\" }";
    assertThat(writtenAgain(climate)).isEqualTo(study(climate));
  }

  @Test
  void theClimateOfAZoneIsWhatItsNameSays() {
    Climate climate = read("{ \"zone\": \"IVb\" }");
    assertThat(climate.name()).isEqualTo("zone IVb, 30 °C 75 % RH");
    assertThat(climate.temperatureC()).isEqualTo(30);
    assertThat(climate.humidityPercent()).isEqualTo(75);
  }

  @Test
  void twelveMonthsMakeAYear() {
    Climate climate = read(months(12));
    assertThat(climate.seasons()).hasSize(12);
    double days = climate.seasons().stream().mapToDouble(Climate.Season::days).sum();
    assertThat(days).isEqualTo(365, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(writtenAgain(months(12))).contains("\"months\"").doesNotContain("\"seasons\"");
  }

  @Test
  void seasonsKeepTheirDays() {
    assertThat(read(SEASONS).seasons().get(0)).isEqualTo(new Climate.Season(90, 30, 75));
    assertThat(writtenAgain(SEASONS)).contains("\"days\": 90");
    assertThat(writtenAgain(SEASONS)).isEqualTo(writtenAgain(SEASONS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{ 'zone': 'IVc' }|\"IVc\" is not a climate zone|\"IVa\"|brief.climate.zone",
        "{ 'zone': 'II', 'name': 'x' }|\"name\" is not known here||brief.climate.name",
        "{ 'name': 'x' }|none of its forms|\"zone\" alone|brief.climate",
        "{ 'name': 'x', 'temperature_C': 20 }|\"humidity_percent\" is missing|Add|brief.climate",
        "{ 'name': 'x', 'seasons': [] }|the climate has no season||brief.climate",
        "{ 'name': 'x', 'temperature_C': 200, 'humidity_percent': 5 }|temperature is 200.0||brief.climate",
        "{ 'name': 'x', 'seasons': [ { 'days': 0, 'temperature_C': 20, 'humidity_percent': 5 } ] }"
            + "|length of the season is 0.0|days|brief.climate.seasons[0]",
        "{ 'name': 'x', 'seasons': [ { 'dys': 9, 'temperature_C': 20, 'humidity_percent': 5 } ] }"
            + "|\"days\" is missing|Is \"dys\" meant|brief.climate.seasons[0]",
      },
      quoteCharacter = '`')
  void saysWhatIsWrongAndWhere(String climate, String problem, String remedy, String path) {
    DataException refusal = ReadingFailure.of(study(climate.replace('\'', '"')));
    assertThat(refusal).isNotNull();
    assertThat(refusal.problem()).contains(problem);
    assertThat(refusal.getMessage()).contains(remedy == null ? "" : remedy);
    assertThat(refusal.place().path()).isEqualTo(path);
  }

  @Test
  void elevenMonthsAreNoYear() {
    DataException refusal = ReadingFailure.of(study(months(11)));
    assertThat(refusal).hasMessageContaining("11 months").hasMessageContaining("seasons");
  }
}
