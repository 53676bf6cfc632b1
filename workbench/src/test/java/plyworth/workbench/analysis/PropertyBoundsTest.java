package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/** Figures that no material can have, by what the built-in plugins declare. */
class PropertyBoundsTest {

  private static final PluginCatalog PLUGINS = BrothStudy.plugins();

  private static List<References.Dangling> check(Property property) {
    Map<String, Property> properties = new TreeMap<>();
    properties.put(
        Material.DENSITY,
        new Property(Material.DENSITY, "kg/m3", List.of(figure(Double.NaN, 900, 900, 900))));
    properties.put(property.id(), property);
    Material material =
        new Material(
            "marsh-film", "marsh film", "test", Set.of("web"), "film", List.of(), properties, "");
    return check(List.of(material));
  }

  private static List<References.Dangling> check(List<Material> materials) {
    Study study = BrothStudy.study();
    return PropertyBounds.check(study.carrying(materials, study.processes()), PLUGINS);
  }

  private static List<References.Dangling> read(String property, double value, String unit) {
    Measurement reading =
        new Measurement(property, value, unit, 1.2, 3, "ASTM D3985", "2026-05-04", "");
    MaterialResult result = new MaterialResult("ldpe", Double.NaN, reading);
    Results results = new Results(List.of(result), List.of());
    return PropertyBounds.check(BrothStudy.study().with(results), PLUGINS);
  }

  @Test
  void readingsThatCannotBeAreNamedLikeFigures() {
    String property = "o2-permeability";
    assertThat(read(property, 190_000, unit(property))).isEmpty();
    assertThat(read(property, 1e12, unit(property)))
        .singleElement()
        .satisfies(
            found -> {
              assertThat(found.path()).isEqualTo("results.measured_materials[0].value");
              assertThat(found.problem()).contains("of ldpe is measured as 1E12");
              assertThat(found.remedy()).contains("between 0.0001 and 1E9");
            });
    assertThat(read(property, 190_000, "cm3/(m2.day.bar)"))
        .singleElement()
        .satisfies(found -> assertThat(found.remedy()).contains("Give it in \"cm3.um"));
  }

  private static Sourced figure(double at, double low, double typical, double high) {
    return new Sourced(at, new Range(low, typical, high), SourceKind.JUDGEMENT, "invented");
  }

  private static String unit(String property) {
    return PLUGINS.plugins().stream()
        .map(LoadedPlugin::plugin)
        .flatMap(p -> p.properties().stream())
        .filter(d -> d.id().equals(property))
        .map(PropertyDefinition::unit)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyFigureOfTheStandardLibraryIsPossible() {
    List<Material> standard = List.copyOf(MaterialLibrary.standard().all());
    assertThat(standard).hasSizeGreaterThan(60);
    assertThat(check(standard)).isEmpty();
  }

  /** Slips of sign, of unit and of the decimal point. */
  @ParameterizedTest
  @CsvSource({
    "o2-permeability, 0, 1600, low, 0 cm³·µm/(m²·day·bar), between 0.0001 and 1E9",
    "wv-permeability, -130, 130, low, -130 g·µm/(m²·day), between 0.001 and 1E8",
    "ipa-permeability, 0.1, 300000, high, 300000 g·mm/(m²·day), and 200000 g·mm/(m²·day)",
    "ethanol-diffusivity, 0, 1, low, 0 µm²/s, 1E-9",
    "wv-activation, 33500, 33500, high, 33500 kJ/mol, between -50 and 150 kJ/mol",
    "density, 0.92, 0.92, low, 0.92 kg/m³, between 1 and 25000",
    "heat-capacity, 2.3, 2.3, low, 2.3 J/(kg·K), between 100",
    "share-pe, 0.9, 95, high, is 95, between 0 and 1.",
    "supplied-solids, 0, 1, low, is 0, between 0.01 and 1.",
    "price, -2, 3, low, -2 EUR/kg, between 0 and 1000"
  })
  void aFigureThatCannotBeIsNamedWithItsBounds(
      String id, double low, double high, String key, String value, String span) {
    Property property = new Property(id, unit(id), List.of(figure(Double.NaN, low, high, high)));
    List<References.Dangling> found = check(property);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).path())
        .isEqualTo("materials[0].properties." + id + ".figures[0]." + key);
    assertThat(found.get(0).problem()).startsWith("the " + id + " of marsh-film").endsWith(value);
    assertThat(found.get(0).remedy()).contains(span, "Mend the figure or its unit; the plugin ");
  }

  @Test
  void aPerfectBarrierHasARateOfZero() {
    Property none = new Property("wv-rate", "g/(m2.day)", List.of(figure(9, 0, 0, 0.05)));
    assertThat(check(none)).isEmpty();
  }

  @Test
  void eachFigureOfATableIsLookedAt() {
    Property factor =
        new Property(
            "o2-humidity-factor",
            "1",
            List.of(figure(50, 1, 1, 1), figure(75, 0, 0, 2), figure(100, 1, 2, 1e7)));
    assertThat(check(factor))
        .extracting(References.Dangling::problem)
        .containsExactly(
            "the o2-humidity-factor of marsh-film at 75 % RH is 0",
            "the o2-humidity-factor of marsh-film at 100 % RH is 1E7");
  }

  @ParameterizedTest
  @CsvSource({"o2-humidity-factor, 1, 120, % RH", "o2-rate, cm3/(m2.day.bar), -7, µm"})
  void whatATableRunsAlongIsLookedAt(String id, String unit, double at, String of) {
    References.Dangling found = check(new Property(id, unit, List.of(figure(at, 1, 1, 1)))).get(0);
    assertThat(found.path()).endsWith("figures[0].at");
    assertThat(found.problem()).contains("is given at " + (int) at + " " + of);
    assertThat(found.remedy()).contains("greater than 0 µm", "between 0 and 100 %");
  }

  @Test
  void aUnitThatThePluginDoesNotReadIsNamed() {
    Property inch = new Property("o2-rate", "cm3/(100in2.day)", List.of(figure(12, 1, 1, 1)));
    References.Dangling found = check(inch).get(0);
    assertThat(found.path()).isEqualTo("materials[0].properties.o2-rate.unit");
    assertThat(found.toString()).contains("cm3/(100in2.day)", "Give it in \"cm3/(m2.day.bar)\"");
  }

  @Test
  void aPropertyThatNoPluginReadsIsNotLookedAt() {
    Property gloss = new Property("gloss", "GU", List.of(figure(Double.NaN, -1, -1, -1)));
    assertThat(check(gloss)).isEmpty();
  }
}
