package plyworth.workbench.desktop.position;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.workbench.desktop.word.Language;

/** Materials found by what people call them. */
class MaterialSearchTest {

  @BeforeEach
  @AfterEach
  void speakEnglish() {
    Language.ENGLISH.speak();
  }

  private static List<String> found(String text) {
    return MaterialSearch.find(MaterialLibrary.standard().all(), text).stream()
        .map(Material::id)
        .toList();
  }

  @Test
  void nothingTypedFindsAll() {
    assertThat(found(" ")).hasSameSizeAs(MaterialLibrary.standard().all());
  }

  @Test
  void theVeryIdStandsFirst() {
    assertThat(found("ldpe")).startsWith("ldpe", "ldpe-biobased").contains("lldpe", "mlldpe");
    assertThat(found("BOPET")).startsWith("bopet");
  }

  @Test
  void anotherIdAnswersAsWell() {
    assertThat(found("alu-foil")).containsExactly("aluminium-foil");
  }

  @Test
  void aFamilyFindsItsMembers() {
    assertThat(found("polyester film")).contains("bopet", "bopet-met").doesNotContain("bopp");
    assertThat(found("ethylene-vinyl alcohol")).contains("evoh-32", "evoh-44");
  }

  @Test
  void theLanguageInForceFindsThemByName() {
    Language.CHINESE.speak();
    assertThat(found("镀铝 聚酯")).contains("bopet-met");
    assertThat(found("油墨")).contains("ink-wb", "ink-uv");
  }

  @Test
  void whatIsNotThereFindsNothing() {
    assertThat(found("unobtainium")).isEmpty();
  }
}
