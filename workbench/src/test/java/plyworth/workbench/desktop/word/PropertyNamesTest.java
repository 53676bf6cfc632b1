package plyworth.workbench.desktop.word;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.MaterialLibrary;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.PropertyReaders;

/** Names of properties. */
class PropertyNamesTest {

  @AfterEach
  void speakEnglishAgain() {
    Language.ENGLISH.speak();
  }

  @Test
  void everyPropertyThatIsCarriedOrReadHasAChineseNameAndNothingElseHas() {
    Set<String> known = new TreeSet<>(PropertyReaders.of(SmallStudy.CATALOG).byProperty().keySet());
    MaterialLibrary.standard().all().forEach(m -> known.addAll(m.properties().keySet()));
    assertThat(PropertyNames.in(Language.CHINESE.locale()).keySet()).isEqualTo(known);
  }

  @Test
  void aPropertyOfAStrangerIsCalledByItsId() {
    assertThat(PropertyNames.of("price")).isEqualTo("price");
    Language.CHINESE.speak();
    assertThat(PropertyNames.of("price")).isEqualTo("价格");
    assertThat(PropertyNames.of("smell")).isEqualTo("smell");
  }
}
