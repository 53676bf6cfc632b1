package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.host.PluginCatalog;

class ReferencesTest {

  private static final PluginCatalog PLUGINS = BrothStudy.plugins();

  private static List<References.Dangling> dangling(String right, String wrong) {
    return References.check(BrothStudy.read(BrothStudy.with(right, wrong)), PLUGINS, Set.of());
  }

  @Test
  void nothingDanglesInAStudyInOrder() {
    assertThat(References.check(BrothStudy.study(), PLUGINS, Set.of())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"barrier/margin\"|\"barier/margin\"|weightings[0].weights.barier/margin|\"barrier\"?",
        "\"barrier/margin\"|\"barrier/magrin\"|weightings[0].weights.barrier/magrin|\"margin\"?",
        "\"margin\": 0.2|\"marign\": 0.2|settings.cost.marign|\"margin\"?",
        "\"margin\": 0.2|\"margin\": -1|settings.cost.margin|between 0.0 and 0.9",
        "\"packs-per-minute\": 40|\"packs-per-minute\": -1|settings.cost.packs-per-minute|packs/min",
        "\"kind\": \"ink\"|\"kind\": \"-inks foil\"|rules[0].kind|\"ink\"?",
        "\"cost/packed-per-1000\": {|\"cost/packd-per-1000\": {|value_functions.cost/packd-per-1000"
            + "|\"packed-per-1000\"?"
      })
  void whatDanglesIsFoundWithItsPathAndASuggestion(
      String right, String wrong, String path, String remedy) {
    References.Dangling first = dangling(right, wrong).get(0);
    assertThat(first.path()).isEqualTo(path);
    assertThat(first.remedy()).contains(remedy);
  }

  private static List<References.Dangling> measured(String criterion, String unit) {
    String measurement =
        "\"measurements\": [ { \"criterion\": \"%s\", \"value\": 0.1, \"unit\": \"%s\", \"spread\": 2,"
            + " \"samples\": 3, \"method\": \"ASTM F1249\" } ], \"positions\":";
    return dangling("\"positions\":", measurement.formatted(criterion, unit));
  }

  @Test
  void aMeasurementIsOfACriterionInItsUnit() {
    assertThat(measured("barrier/wvtr", "g/(m2.day)")).isEmpty();
    References.Dangling unit = measured("barrier/wvtr", "g/(100in2.day)").get(0);
    assertThat(unit.path()).isEqualTo("measurements[0].unit");
    assertThat(unit.remedy()).contains("\"g/(m2.day)\"");
    References.Dangling criterion = measured("barrier/wtvr", "g/(m2.day)").get(0);
    assertThat(criterion.path()).isEqualTo("measurements[0].criterion");
    assertThat(criterion.remedy()).contains("\"wvtr\"");
  }

  @Test
  void aPluginThatIsNotLoadedIsNamed() {
    List<References.Dangling> found =
        References.check(BrothStudy.study(), PLUGINS.without(Set.of("barrier")), Set.of());
    assertThat(found).extracting(d -> d.plugin().orElseThrow()).containsOnly("barrier");
    assertThat(found.get(0).toString()).contains("which is not loaded", "Put its jar into");
  }

  @Test
  void aPluginThatIsLeftOutOnPurposeDoesNotDangle() {
    Set<String> leftOut = Set.of("barrier", "cost");
    assertThat(References.check(BrothStudy.study(), PLUGINS.without(leftOut), leftOut)).isEmpty();
  }

  @Test
  void settingsOfAPluginThatIsNotLoadedAreKeptUnread() {
    Set<String> leftOut = Set.of("cost");
    String far = BrothStudy.with("\"margin\": 0.2", "\"margin\": 7");
    assertThat(References.check(BrothStudy.read(far), PLUGINS.without(leftOut), leftOut)).isEmpty();
  }
}
