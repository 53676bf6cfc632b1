package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.data.DataException;
import plyworth.shared.material.Material;
import plyworth.shared.material.SourceKind;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

class MaterialImportTest {

  private static final Study STUDY = SmallStudy.few();
  private static final String HEADER = "material,property,at,low,typical,high,unit,kind,source\n";

  private static MaterialImport read(String... lines) {
    String text = HEADER + String.join("\n", lines) + "\n";
    return MaterialImport.read(text, "prices.csv", STUDY, SmallStudy.CATALOG);
  }

  private static List<String> reasons(MaterialImport read) {
    return read.refused().stream().map(line -> line.line() + ": " + line.reason()).toList();
  }

  @Test
  void whatIsExportedChangesNothing() {
    String text = MaterialsCsv.text(STUDY.materialsBefore().all());
    MaterialImport read = MaterialImport.read(text, "all.csv", STUDY, SmallStudy.CATALOG);
    assertThat(read.changes()).isEmpty();
    assertThat(read.refused()).isEmpty();
    assertThat(read.same()).isGreaterThan(1500);
    assertThat(read.study()).isEqualTo(STUDY);
  }

  @Test
  void aPriceBecomesAnotherInTheStudysOwnCopyAlone() {
    MaterialImport read =
        read("kraft-paper,price,,1.9,2,2.4,EUR/kg,measured,offer of a paper mill");
    assertThat(read.refused()).isEmpty();
    assertThat(read.changes()).hasSize(1);
    assertThat(read.changes().get(0).before()).isPresent();
    Material own = read.study().materialsBefore().require("kraft-paper");
    assertThat(own.figure("price", Double.NaN).typical()).isEqualTo(2);
    assertThat(own.properties().get("price").points().get(0).kind()).isEqualTo(SourceKind.MEASURED);
    assertThat(StudyMaterials.carries(STUDY, "kraft-paper")).isFalse();
    assertThat(StudyMaterials.own(read.study(), "kraft-paper")).isTrue();
  }

  /** 1 lb is 0.453 592 37 kg. */
  @Test
  void aPriceByThePoundIsKeptByTheKilogram() {
    MaterialImport read = read("kraft-paper,price,,0.9,1,1.1,EUR/lb,measured,offer");
    assertThat(read.changes().get(0).after().range().typical()).isCloseTo(2.2046, within(1e-4));
    assertThat(read.changes().get(0).after().unit()).isEqualTo("EUR/kg");
  }

  @Test
  void wrongLinesAreRefusedByNumberAndTheOthersAreTaken() {
    MaterialImport read =
        read(
            "kraft-papr,price,,1.9,2,2.4,EUR/kg,measured,offer",
            "kraft-paper,price,,1.9,2,2.4,EUR/kg,measured,offer",
            "ldpe,price,,3,2,1,EUR/kg,measured,offer",
            "ldpe,density,,900,920,930,kg/m3,measured,",
            "ldpe,pryce,,1,1,1,EUR/kg,measured,offer",
            "eaa,price,,1,1,1,m2,measured,offer",
            "eaa,density,,1,1,1e9,kg/m3,measured,offer",
            "glassine,price,,1,one,1,EUR/kg,measured,offer",
            "glassine,density,,900,920,930,kg/m3,hearsay,offer");
    assertThat(read.changes()).hasSize(1);
    assertThat(reasons(read))
        .satisfiesExactly(
            r -> assertThat(r).startsWith("2: ").contains("Did you mean \"kraft-paper\"?"),
            r -> assertThat(r).startsWith("4: ").contains("low ≤ typical ≤ high"),
            r -> assertThat(r).startsWith("5: ").contains("a figure needs a source"),
            r -> assertThat(r).startsWith("6: ").contains("Did you mean \"price\"?"),
            r -> assertThat(r).startsWith("7: ").contains("Give it in \"EUR/kg\"."),
            r -> assertThat(r).startsWith("8: ").contains("must lie between").contains("plugin"),
            r -> assertThat(r).startsWith("9: ").contains("is not a number"),
            r -> assertThat(r).startsWith("10: ").contains("is not a kind of source"));
  }

  @Test
  void aFileAsSpreadsheetsWriteItIsRead() {
    String text =
        "\uFEFF" + HEADER.strip() + "\r\nldpe,price,,1,1.2,1.5,EUR/kg,measured,\"offer, net\"\r\n";
    MaterialImport read = MaterialImport.read(text, "prices.csv", STUDY, SmallStudy.CATALOG);
    assertThat(read.refused()).isEmpty();
    assertThat(read.changes().get(0).after().points().get(0).source()).isEqualTo("offer, net");
  }

  @Test
  void halfATableIsNotTakenOver() {
    MaterialImport read =
        read(
            "glassine,o2-humidity-factor,0,1,1,1,1,measured,climate chamber",
            "glassine,o2-humidity-factor,50,1,x,2,1,measured,climate chamber",
            "glassine,o2-humidity-factor,80,2,3,4,1,measured,climate chamber");
    assertThat(read.changes()).isEmpty();
    assertThat(reasons(read)).hasSize(3);
    assertThat(reasons(read).get(0)).contains("another line of the same property is refused");
  }

  @Test
  void onePlaceGivenTwiceIsRefused() {
    MaterialImport read =
        read(
            "glassine,o2-humidity-factor,50,1,1,1,1,measured,climate chamber",
            "glassine,o2-humidity-factor,50,1,2,2,1,measured,climate chamber");
    assertThat(reasons(read)).hasSize(2);
    assertThat(reasons(read).get(0)).contains("twice at the same place");
  }

  private static final String LONGER = HEADER.strip() + ",name,family,kinds,basis,aliases,note\n";
  private static final String DENSITY =
      "cast-film,density,,890,900,910,kg/m3,measured,ISO 1183,Cast film,polypropylene,"
          + "web film transparent,film,,from a supplier";
  private static final String PRICE = "cast-film,price,,1.6,1.8,2,EUR/kg,measured,offer,,,,,,";

  private static MaterialImport described(String... lines) {
    String text = LONGER + String.join("\n", lines) + "\n";
    return MaterialImport.read(text, "film.csv", STUDY, SmallStudy.CATALOG);
  }

  @Test
  void aMaterialThatIsDescribedComesWithItsFigures() {
    MaterialImport read = described(PRICE, DENSITY);
    assertThat(read.refused()).isEmpty();
    Material brought = read.study().materialsBefore().require("cast-film");
    assertThat(read.added()).containsExactly(brought);
    assertThat(brought.name()).isEqualTo("Cast film");
    assertThat(brought.kinds()).containsExactly("film", "transparent", "web");
    assertThat(brought.density()).isEqualTo(900);
    assertThat(brought.figure("price", Double.NaN).typical()).isEqualTo(1.8);
    assertThat(read.changes()).hasSize(2).allMatch(change -> change.before().isEmpty());
  }

  @Test
  void aMaterialOfAnotherStudyIsExportedAndBroughtUnchanged() {
    Study other = described(PRICE, DENSITY).study();
    String text = MaterialsCsv.text(StudyMaterials.here(other));
    MaterialImport read = MaterialImport.read(text, "all.csv", STUDY, SmallStudy.CATALOG);
    assertThat(read.refused()).isEmpty();
    assertThat(read.study().materialsBefore().all())
        .containsExactlyInAnyOrderElementsOf(other.materialsBefore().all());
    assertThat(MaterialsCsv.text(StudyMaterials.here(read.study()))).isEqualTo(text);
  }

  @Test
  void aMaterialDoesNotComeWithoutItsDensity() {
    MaterialImport none = described(PRICE.replace(",,,,,,", ",Film,wax,web,film,,"));
    assertThat(none.study()).isEqualTo(STUDY);
    assertThat(reasons(none).get(0)).startsWith("2: ").contains("needs its density");
    MaterialImport heavy = described(PRICE, DENSITY.replace("910", "1e9"));
    assertThat(heavy.study()).isEqualTo(STUDY);
    assertThat(reasons(heavy))
        .satisfiesExactly(
            r -> assertThat(r).startsWith("2: ").contains("needs its density"),
            r -> assertThat(r).startsWith("3: ").contains("must lie between"));
  }

  @Test
  void aFigureThatIsRefusedDoesNotKeepANewMaterialAway() {
    MaterialImport read = described(DENSITY, PRICE.replace("1.8", "dear"));
    assertThat(reasons(read)).hasSize(1);
    assertThat(reasons(read).get(0)).startsWith("3: ").contains("is not a number");
    assertThat(read.added()).hasSize(1);
  }

  @Test
  void aDescriptionThatLacksOrMistakesSomethingIsRefused() {
    assertThat(reasons(described(DENSITY.replace(",Cast film,", ",,"))).get(0))
        .startsWith("2: a new material needs name");
    assertThat(reasons(described(DENSITY.replace("web film", "webb film"))).get(0))
        .contains("\"webb\" is not a kind. Did you mean \"web\"?");
    assertThat(reasons(described(DENSITY.replace(",film,,", ",foam,,"))).get(0))
        .contains("\"foam\" is not a basis");
    assertThat(reasons(described(DENSITY.replace("cast-film,", "Cast Film,"))).get(0))
        .contains("is not a material id");
    assertThat(reasons(described(DENSITY, DENSITY.replace("Cast film", "Blown film"))))
        .anyMatch(r -> r.contains("a line before describes this material otherwise"));
  }

  @Test
  void aMaterialThatIsThereKeepsItsNameAndTakesTheFigures() {
    MaterialImport read =
        described("ldpe,price,,1,1.2,1.5,EUR/kg,measured,offer,Another name,,,,,");
    assertThat(reasons(read)).hasSize(1);
    assertThat(reasons(read).get(0)).contains("has this material already, with another name");
    assertThat(read.changes()).hasSize(1);
    assertThat(read.study().materialsBefore().require("ldpe").name())
        .isEqualTo(STUDY.materialsBefore().require("ldpe").name());
  }

  @Test
  void aMaterialThatNobodyDescribesIsRefusedWithWhatItNeeds() {
    assertThat(reasons(read("cast-film,price,,1,1.2,1.5,EUR/kg,measured,offer")).get(0))
        .contains("is not in the library")
        .contains("A new material says what it is: name, family, kinds, basis, aliases, note.");
  }

  @Test
  void aFileWithOtherColumnsIsRefusedWithTheColumnsItNeeds() {
    assertThatThrownBy(
            () -> MaterialImport.read("a,b\n1,2\n", "prices.csv", STUDY, SmallStudy.CATALOG))
        .isInstanceOf(DataException.class)
        .hasMessageContaining("prices.csv, line 1")
        .hasMessageContaining("They must be material,property,at");
  }
}
