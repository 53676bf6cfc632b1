package plyworth.workbench.desktop.word;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;

/** Names of materials. */
class MaterialNamesTest {

  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  @AfterEach
  void speakEnglishAgain() {
    Language.ENGLISH.speak();
  }

  @Test
  void everyMaterialOfTheLibraryHasAChineseNameAndNothingElseHas() {
    Set<String> named = MaterialNames.in(Language.CHINESE.locale()).keySet();
    Set<String> known = LIBRARY.all().stream().map(Material::id).collect(Collectors.toSet());
    assertThat(named).isEqualTo(known);
  }

  @Test
  void aMaterialIsNamedInTheLanguageInForce() {
    Material foil = LIBRARY.require("aluminium-foil");
    assertThat(MaterialNames.of(foil)).isEqualTo("Aluminium foil, soft");
    Language.CHINESE.speak();
    assertThat(MaterialNames.of(foil)).isEqualTo("铝箔，软态");
  }
}
