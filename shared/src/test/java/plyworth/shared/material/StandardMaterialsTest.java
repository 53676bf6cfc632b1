package plyworth.shared.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Resources;

/** The materials that come with the product, as data. */
class StandardMaterialsTest {

  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  private static Stream<Property> properties() {
    return LIBRARY.all().stream().flatMap(m -> m.properties().values().stream());
  }

  private static List<Csv.Row> rows(String name, String... header) {
    return Csv.read(Resources.text(MaterialLibrary.class, name), name, List.of(header));
  }

  @Test
  void allSixtySevenAreThere() {
    assertThat(LIBRARY.all()).hasSize(67);
  }

  @Test
  void everyFigureSaysWhereItComesFromOrThatItDoesNotKnow() {
    assertThat(properties().flatMap(p -> p.points().stream()))
        .hasSizeGreaterThan(1900)
        .allMatch(p -> !p.source().isBlank())
        .allMatch(p -> p.kind() != SourceKind.MEMORY || p.source().contains("from memory"))
        .allMatch(p -> p.kind() != SourceKind.PRACTICE || p.source().contains("common practice"))
        .allMatch(p -> p.kind() != SourceKind.MEASURED)
        .allMatch(p -> p.range().known());
  }

  @Test
  void propertyHasOneUnitWhereverItStands() {
    Map<String, String> units = new HashMap<>();
    properties()
        .forEach(
            p ->
                assertThat(p.unit())
                    .as(p.id())
                    .isEqualTo(units.computeIfAbsent(p.id(), id -> p.unit())));
    assertThat(units).containsEntry("density", "kg/m3").hasSizeGreaterThan(30);
  }

  @Test
  void sharesOfEveryMaterialAddUpToOne() {
    for (Material material : LIBRARY.all()) {
      double sum =
          material.properties().values().stream()
              .filter(p -> p.id().startsWith("share-"))
              .mapToDouble(p -> p.range().typical())
              .sum();
      assertThat(sum).as(material.id()).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void everyMaterialHasOneDensityThatCanBe() {
    for (Material material : LIBRARY.all()) {
      Property density = material.property(Material.DENSITY).orElseThrow();
      assertThat(density.points()).as(material.id()).hasSize(1);
      assertThat(material.density()).as(material.id()).isBetween(500.0, 2800.0);
    }
  }

  @Test
  void namesAndAliasesMeanOneMaterialEach() {
    Set<String> taken = new HashSet<>();
    LIBRARY.all().forEach(m -> assertThat(taken.add(m.id())).as(m.id()).isTrue());
    LIBRARY.all().stream()
        .map(Material::aliases)
        .flatMap(Collection::stream)
        .forEach(alias -> assertThat(taken.add(alias)).as(alias).isTrue());
  }

  @Test
  void everyRowOfTheSourceTablesHasAMaterialOrSaysWhyNot() {
    List<Csv.Row> rows = rows("source-ids.csv", "table", "id", "canonical", "basis", "reason");
    assertThat(rows).filteredOn(r -> r.text("table").equals("barrier")).hasSize(44);
    assertThat(rows).filteredOn(r -> r.text("table").equals("machinability")).hasSize(50);
    assertThat(rows).filteredOn(r -> r.text("table").equals("cost-carbon")).hasSize(65);
    assertThat(rows).hasSize(44 + 50 + 65);
    for (Csv.Row row : rows) {
      if (row.text("canonical").isEmpty()) {
        assertThat(row.text("reason")).as(row.text("id")).isNotBlank();
      } else {
        assertThat(LIBRARY.find(row.text("canonical"))).as(row.text("id")).isPresent();
      }
    }
  }

  @Test
  void threeMaterialsComeFromNoRowOfTheSourceTables() {
    List<String> canonical =
        rows("source-ids.csv", "table", "id", "canonical", "basis", "reason").stream()
            .map(r -> r.text("canonical"))
            .toList();
    assertThat(LIBRARY.all().stream().map(Material::id).filter(id -> !canonical.contains(id)))
        .containsExactlyInAnyOrder("heat-resistant-lacquer", "ink-toner", "wash-primer");
  }

  @Test
  void chosenDensityIsTheOneInTheLibrary() {
    List<Csv.Row> rows =
        rows(
            "density-conflicts.csv",
            "material",
            "chosen_kg_m3",
            "barrier",
            "machinability",
            "cost_carbon",
            "reason");
    assertThat(rows).hasSize(20);
    for (Csv.Row row : rows) {
      assertThat(LIBRARY.require(row.text("material")).density())
          .as(row.text("material"))
          .isEqualTo(row.number("chosen_kg_m3"));
      assertThat(row.text("reason")).isNotBlank();
    }
  }
}
