package plyworth.shared.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;

class ResultsTest {

  private static final String OXYGEN = "o2-permeability";
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  private static MaterialResult result(
      String material, String property, double at, double value, double spread) {
    Property before = LIBRARY.require(material).property(property).orElse(null);
    String unit = before == null ? "1" : before.unit();
    return new MaterialResult(
        material,
        at,
        new Measurement(property, value, unit, spread, 3, "ASTM D3985", "2026-05-04", ""));
  }

  private static MaterialLibrary corrected(MaterialResult... results) {
    return new Results(List.of(results), List.of()).correct(LIBRARY);
  }

  private static Property property(MaterialLibrary library, String material, String id) {
    return library.require(material).property(id).orElseThrow();
  }

  @Test
  void readingMovesAFigureTowardsItselfAndNarrowsIt() {
    Range before = property(LIBRARY, "ldpe", OXYGEN).range();
    double value = before.typical() * 1.5;
    Range after =
        property(corrected(result("ldpe", OXYGEN, Double.NaN, value, 1.1)), "ldpe", OXYGEN).range();
    assertThat(after.typical()).isBetween(before.typical(), value);
    assertThat(after.high() / after.low()).isLessThan(before.high() / before.low());
  }

  @Test
  void originOfACorrectedFigureNamesWhatItWasAndWhatWasRead() {
    String before = property(LIBRARY, "ldpe", OXYGEN).points().get(0).source();
    var after =
        property(corrected(result("ldpe", OXYGEN, Double.NaN, 2e5, 1.05)), "ldpe", OXYGEN)
            .points()
            .get(0);
    assertThat(after.source()).startsWith(before).contains("ASTM D3985", "3 samples", "2026-05-04");
    assertThat(after.kind()).isEqualTo(SourceKind.MEASURED);
  }

  @Test
  void otherMaterialsStayAsTheyAre() {
    MaterialLibrary after = corrected(result("ldpe", OXYGEN, Double.NaN, 2e5, 1.1));
    for (Material material : LIBRARY.all()) {
      if (!material.id().equals("ldpe")) {
        assertThat(after.require(material.id())).isSameAs(material);
      }
    }
  }

  @Test
  void certainReadingTakesThePlaceOfTheFigure() {
    Range after =
        property(corrected(result("ldpe", OXYGEN, Double.NaN, 1.23e5, 1)), "ldpe", OXYGEN).range();
    assertThat(after.low()).isCloseTo(1.23e5, within(1e-6));
    assertThat(after.high()).isCloseTo(1.23e5, within(1e-6));
  }

  @Test
  void figureThatWasUnknownIsTheReading() {
    MaterialResult first = result("ldpe", "made-up-figure", Double.NaN, 7, 2);
    Property after = property(corrected(first), "ldpe", "made-up-figure");
    assertThat(after.unit()).isEqualTo("1");
    assertThat(after.range().low()).isCloseTo(3.5, within(1e-12));
    assertThat(after.range().high()).isCloseTo(14, within(1e-12));
  }

  @Test
  void readingAtOneHumidityMovesTheWholeTable() {
    Property before = tabulated();
    String owner = owner(before);
    double at = before.points().get(0).at();
    double value = before.at(at).typical() * 2;
    Property after =
        property(corrected(result(owner, before.id(), at, value, 1.01)), owner, before.id());
    for (int i = 0; i < before.points().size(); i++) {
      LogNormal was = LogNormal.of(before.points().get(i).range());
      LogNormal is = LogNormal.of(after.points().get(i).range());
      assertThat(is.mean()).as("point " + i).isGreaterThan(was.mean());
      assertThat(is.deviation()).isLessThanOrEqualTo(was.deviation());
    }
  }

  private static Property tabulated() {
    return LIBRARY.all().stream()
        .flatMap(m -> m.properties().values().stream())
        .filter(p -> p.points().size() > 1)
        .filter(p -> p.points().stream().allMatch(f -> f.range().low() > 0))
        .filter(p -> p.points().stream().allMatch(f -> f.range().low() < f.range().high()))
        .findFirst()
        .orElseThrow();
  }

  private static String owner(Property property) {
    return LIBRARY.all().stream()
        .filter(m -> m.properties().containsValue(property))
        .findFirst()
        .orElseThrow()
        .id();
  }

  @Test
  void twoLaboratoriesMayReportInEitherOrder() {
    MaterialResult one = result("ldpe", OXYGEN, Double.NaN, 1.5e5, 1.2);
    MaterialResult other = result("ldpe", OXYGEN, Double.NaN, 2.5e5, 1.4);
    Range there = property(corrected(one, other), "ldpe", OXYGEN).range();
    Range back = property(corrected(other, one), "ldpe", OXYGEN).range();
    assertThat(there.typical()).isCloseTo(back.typical(), within(1e-6));
    assertThat(there.high()).isCloseTo(back.high(), within(1e-6));
  }
}
