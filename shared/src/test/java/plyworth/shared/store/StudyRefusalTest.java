package plyworth.shared.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.data.DataException;

/** What a spoilt study file is answered with: file, line, path, what is wrong, what is right. */
class StudyRefusalTest {

  private static final String SOUND = StudyFile.write(SampleStudies.sugar());

  private static DataException refusal(String right, String wrong) {
    assertThat(SOUND.contains(right)).as("the sound file holds " + right).isTrue();
    DataException refusal = ReadingFailure.of(SOUND.replace(right, wrong));
    assertThat(refusal).as(wrong + " is refused").isNotNull();
    return refusal;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"question\":|\"qestion\":|the key \"qestion\" is not known here|\"question\"",
        "\"mass_g\": 4,|\"mass_kg\": 4,|\"mass_g\" is missing|Is \"mass_kg\" meant",
        "\"title\": \"Sugar stick\"|\"title\": 7|found a number where a text|text in quotes",
        "\"width_mm\": 20,|\"width_mm\": \"20 mm\",|found a text where a number|Write a number",
        "\"width_mm\": 20,|\"width_mm\": NaN,|NaN and Infinity are not JSON|null",
        "\"width_mm\": 20,|\"width_mm\": -20,|the pack width is -20.0|greater than 0 mm",
        "\"lanes\": 10,|\"lanes\": 2.5,|2.5 is not a whole number|whole number",
        "\"form\": \"crystals\"|\"form\": \"crystal\"|\"crystal\" is not known here|\"crystals\"",
        "[ \"fines\" ]|[ \"fine\" ]|\"fine\" is not a content|\"fines\"",
        "\"form\": \"deliquescent\"|\"form\": \"delisquescent\"|not a form of isotherm|\"deliquescent\"",
        "aluminium-foil 7 um|aluminium-foil -7 um|amount of aluminium-foil is -7.0|greater than 0 µm",
        "aluminium-foil 7 um|aluminum-foil 7 um|\"aluminum-foil\" is not in the|\"aluminium-foil\"",
        "aluminium-foil 7 um|aluminium-foil 7 m|\"m\" is not a unit of a layer|um, nm, mil",
        "@flexo-water 40 %|@flexo-woter 40 %|process \"@flexo-woter\" is not known|\"flexo-water\"",
        "\"barrier/otr\": 2|\"barrier-otr\": 2|\"barrier-otr\" is not a criterion|\"barrier/otr\"",
        "\"barrier/otr\": 2|\"barrier/otr\": -2|weight of barrier/otr is -2.0|0 or more",
        "\"weighting\": \"Purchasing\"|\"weighting\": \"Buying\"|\"Buying\", is not among|weightings",
        "\"scale\": \"logarithmic\"|\"scale\": \"logarithm\"|not a scale|\"logarithmic\"",
        "\"bound\": \"at-most\"|\"bound\": \"at-mots\"|\"at-mots\" is not known|\"at-most\"",
        "\"cost\": { \"margin\"|\"Cost\": { \"margin\"|\"Cost\" is not a plugin id|lower-case",
        "\"unit\": \"kg/m3\"|\"unit\": \"g/cm3\"|density is given in g/cm3|Give it in kg/m3",
        "\"kind\": \"memory\"|\"kind\": \"memry\"|\"memry\" is not known|\"memory\"",
        "\"handling\": \"shipped\"|\"handling\": \"shiped\"|\"shiped\" is not known|\"shipped\"",
        "\"criterion\": \"barrier/otr\"|\"criterion\": \"otr\"|\"otr\" is not a criterion|barrier/otr",
        "\"value\": 0.04,|\"value\": -0.04,|the measured barrier/otr is -0.04|greater than 0",
        "\"spread\": 1.5|\"spred\": 1.5|\"spread\" is missing|Is \"spred\" meant",
        "\"spread\": 1.5|\"spread\": 0.5|the spread of barrier/otr is 0.5|1 or more",
        "\"samples\": 5|\"samples\": 0|number of samples of barrier/otr is 0|1 or more",
        "\"ASTM F1927\"|\"\"|the method of measuring barrier/otr is empty|say how",
        "\"2026-03-12\"|\"12.3.2026\"|is \"12.3.2026\"|2026-03-12",
        "\"material\": \"ldpe\"|\"material\": \"ldpee\"|\"ldpee\" is not in the library|\"ldpe\"",
        "\"property\": \"o2-permeability\"|\"property\": \"density\"|density of ldpe is given in|Give it in \"kg/m3\"",
        "\"2026-05-11\"|\"11 May\"|the date of a remark is \"11 May\"|2026-03-12",
        "\"Ask for a second source.\"|\" \"|a remark says nothing|take it out",
        "\"rule\": \"at-most\"|\"rule\": \"at-moust\"|not a form of rule|\"at-most\"",
        "\"spoilt_by\": \"moistening\"|\"spoilt_by\": \"drying\"|spoilt by moistening, not|other way",
        "\"spoilt_by\": \"moistening\"|\"spoilt_by\": \"damp\"|\"damp\" is not known|moistening",
        "\"film-press\",|\"wide-press\",|two machines or services have the id \"wide-press\"|rename",
        "[ \"flexo-water\" ]|[ \"flexo-watre\" ]|\"@flexo-watre\" is not known|\"flexo-water\"",
        "[ \"flexo-water\" ]|[ \"coextruded\" ]|\"coextruded\" is no pass|under \"webs\"",
        "[ \"flexo-water\" ]|[ ]|narrow-press runs no process|at least one",
        "\"from\": 400, \"to\": 800|\"from\": 800, \"to\": 400|from 800.0 to 400.0 is none|lower end",
        "\"from\": 400, \"to\": 800|\"from\": 400|\"to\" is missing|Add it",
        "\"35 to 80 g/m2\"|\"35 - 80 g/m2\"|\"35 - 80 g/m2\" is neither an amount|120 g/m2",
        "\"print_stations\": 6|\"print_stations\": -6|has -6 print stations|0 or more",
        "\"days\": 12|\"days\": -12|a pass on gravure-house takes -12.0 days|0 or more",
        "\"setup_EUR\": 600|\"set_up_EUR\": 600|\"setup_EUR\" is missing|\"set_up_EUR\" meant",
        "\"setup_EUR\": 600|\"setup_EUR\": -600|a charge of -600.0 EUR|is none",
        "\"material\": \"bopp-met\"|\"material\": \"bop-met\"|\"bop-met\" is not in the|\"bopp-met\"",
        "\"minimum_order_kg\": 3000|\"minimum_order_kg\": -3000|minimum order of -3000.0|0 or more",
        "\"minimum_order_kg\": 3000|\"minimum_order_m2\": 1, \"minimum_order_kg\": 3|given twice|not in both",
        "\"process\": \"coextruded\"|\"process\": \"slitting\"|does not make a part|\"coextruded\"",
        "\"lead_days\": 42|\"lead_days\": -42|lead time of aluminium-foil is -42.0|nothing when unknown",
        "\"lead_days\": 42|\"lead_time\": 42|\"lead_time\" is not known here|lead_days",
        "\"schema\": 6,|\"schema\": 7,|schema 7; this program reads 0 to 6|newer version",
        "\"schema\": 6,||the key \"schema\" is missing|Add it"
      })
  void saysWhatIsWrongAndWhatWouldBeRight(
      String right, String wrong, String problem, String remedy) {
    DataException refusal = refusal(right, wrong == null ? "" : wrong);
    assertThat(refusal.problem()).contains(problem);
    assertThat(refusal.getMessage()).contains(remedy).startsWith("sugar.study.json, line ");
  }

  @Test
  void keyThatStandsTwiceIsRefused() {
    DataException refusal = refusal("\"title\":", "\"title\": \"twice\", \"title\":");
    assertThat(refusal).hasMessageContaining("Duplicate field 'title'").hasMessageContaining("two");
  }

  @Test
  void materialThatStandsTwiceIsRefused() {
    DataException refusal = refusal("\"id\": \"bopet-met\"", "\"id\": \"aluminium-foil\"");
    assertThat(refusal).hasMessageContaining("\"aluminium-foil\" stands twice");
  }

  @Test
  void placeLeadsToTheFault() {
    DataException refusal = refusal("\"width_mm\": 20,", "\"width_mm\": \"20\",");
    assertThat(refusal.place().source()).isEqualTo("sugar.study.json");
    assertThat(refusal.place().path()).isEqualTo("brief.pack.width_mm");
    int line = refusal.place().line();
    assertThat(SOUND.split("\n")[line - 1]).contains("\"width_mm\"");
  }

  @Test
  void placeOfAWrongLayerIsItsOption() {
    DataException refusal = refusal("\"kraft-paper 50 g/m2\"", "\"kraft-paper\"");
    assertThat(refusal.place().path()).isEqualTo("positions[1].options[0]");
    assertThat(refusal).hasMessageContaining("write: material amount unit");
  }

  @ParameterizedTest
  @CsvSource({"0", "1", "0.1", "0.5", "0.9"})
  void truncatedFileIsRefused(double share) {
    DataException refusal =
        ReadingFailure.of(SOUND.substring(0, (int) (share * (SOUND.length() - 2))));
    assertThat(refusal).isNotNull();
    assertThat(refusal.remedy()).contains("Restore");
  }

  @Test
  void textAfterTheEndIsRefused() {
    assertThat(ReadingFailure.of(SOUND + "{}")).hasMessageContaining("text follows the end");
  }

  @Test
  void absentMaterialsAreTakenFromTheLibrary() {
    String without = SOUND.replaceAll("(?s)  \"materials\": .*  \"decision\"", "  \"decision\"");
    assertThat(without.length()).isLessThan(SOUND.length() / 3);
    assertThat(StudyFile.write(StudyFile.read(without, "x")).equals(SOUND)).isTrue();
  }

  @Test
  void propertyThatNobodyKnowsYetIsKept() {
    String added =
        "\"gloss\": { \"unit\": \"GU\", \"figures\": [ { \"low\": 1, \"typical\": 2, \"high\": 3,"
            + " \"kind\": \"measured\", \"source\": \"own laboratory\" } ] }, \"density\":";
    String text = SOUND.replaceFirst("\"density\":", added);
    assertThat(StudyFile.read(text, "x").materials().get(0).property("gloss")).isPresent();
  }
}
