package plyworth.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Handling;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Resources;
import plyworth.shared.study.Study;
import plyworth.shared.study.WeightsBy;

/** One file of every earlier schema is read as it was meant. */
class MigrationsTest {

  private static final String SCHEMA_0 =
      Resources.text(MigrationsTest.class, "schema-0.study.json");

  private static final String SCHEMA_1 =
      Resources.text(MigrationsTest.class, "schema-1.study.json");

  private static final String SCHEMA_2 =
      Resources.text(MigrationsTest.class, "schema-2.study.json");

  private static final String SCHEMA_3 =
      Resources.text(MigrationsTest.class, "schema-3.study.json");

  private static final String SCHEMA_4 =
      Resources.text(MigrationsTest.class, "schema-4.study.json");

  private static final String SCHEMA_5 =
      Resources.text(MigrationsTest.class, "schema-5.study.json");

  @Test
  void schema0GetsOneWeightingNamedGeneral() {
    Study study = StudyFile.read(SCHEMA_0, "schema-0.study.json");
    assertThat(study.weightings()).hasSize(1);
    assertThat(study.activeWeighting().name()).isEqualTo("General");
    assertThat(study.activeWeighting().weights())
        .isEqualTo(Map.of("barrier/otr", 3.0, "cost/price-per-1000", 1.0));
    assertThat(study.baseline().layers()).hasSize(5);
  }

  @Test
  void schema1IsShippedAndNothingWasMeasured() {
    Study study = StudyFile.read(SCHEMA_1, "schema-1.study.json");
    assertThat(study.brief().handling()).isEqualTo(Handling.SHIPPED);
    assertThat(study.measurements()).isEmpty();
    assertThat(study.brief().climate()).isEqualTo(new Climate("23 °C 50 % RH", 23, 50));
  }

  @Test
  void schema2DrawsFromOneAsItDidWithoutASeed() {
    Study study = StudyFile.read(SCHEMA_2, "schema-2.study.json");
    assertThat(study.seed()).isEqualTo(1);
    assertThat(study.brief().handling()).isEqualTo(Handling.ROUGH);
  }

  @Test
  void schema3KeepsItsWeightsAsNumbers() {
    Study study = StudyFile.read(SCHEMA_3, "schema-3.study.json");
    assertThat(study.seed()).isEqualTo(5);
    assertThat(study.activeWeighting().by())
        .isEqualTo(new WeightsBy.Numbers(Map.of("barrier/otr", 3.0, "cost/price-per-1000", 1.0)));
  }

  /** Its product starts at a water activity of 0.6 and is spoilt at 0.4. */
  @Test
  void schema4SpoilsTheWayFromItsInitialActivityToTheCriticalOne() {
    Study study = StudyFile.read(SCHEMA_4, "schema-4.study.json");
    assertThat(study.brief().product().moisture().orElseThrow().spoiltBy())
        .isEqualTo(MoistureLimit.Way.DRYING);
    Study crystals = StudyFile.read(SCHEMA_3, "schema-3.study.json");
    assertThat(crystals.brief().product().moisture().orElseThrow().spoiltBy())
        .isEqualTo(MoistureLimit.Way.MOISTENING);
    String wet = SCHEMA_3.replace("\"initial_activity\": 0.4", "\"initial_activity\": 0.9");
    assertThat(StudyFile.read(wet, "wet").brief().product().moisture().orElseThrow().spoiltBy())
        .as("crystals that dissolve are never spoilt by drying")
        .isEqualTo(MoistureLimit.Way.MOISTENING);
  }

  @Test
  void schema5SaysNothingOfAPlant() {
    Study study = StudyFile.read(SCHEMA_5, "schema-5.study.json");
    assertThat(study.plant()).isEmpty();
    assertThat(study.brief().product().moisture().orElseThrow().spoiltBy())
        .isEqualTo(MoistureLimit.Way.DRYING);
    assertThat(StudyFile.write(study)).doesNotContain("\"plant\"");
  }

  @Test
  void everyEarlierSchemaHasATestFile() {
    for (int schema = 0; schema < Migrations.CURRENT; schema++) {
      String name = "schema-" + schema + StudyFile.SUFFIX;
      assertThat(Resources.text(MigrationsTest.class, name)).contains("\"schema\": " + schema);
    }
  }

  @Test
  void liftedStudyIsWrittenInTheCurrentSchema() {
    String text = StudyFile.write(StudyFile.read(SCHEMA_0, "schema-0.study.json"));
    assertThat(text.startsWith("{\n  \"schema\": " + Migrations.CURRENT)).isTrue();
    assertThat(text.contains("\"weightings\"")).isTrue();
  }

  @Test
  void faultInAnEarlierSchemaIsSaidWithItsPlace() {
    String wrong = SCHEMA_0.replace("\"barrier/otr\": 3", "\"barrier/otr\": \"3\"");
    assertThatThrownBy(() -> StudyFile.read(wrong, "old.study.json"))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("old.study.json, line ")
        .hasMessageContaining("weights.barrier/otr");
  }
}
