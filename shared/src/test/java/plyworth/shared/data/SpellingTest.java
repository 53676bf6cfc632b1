package plyworth.shared.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpellingTest {

  private static final List<String> KNOWN = List.of("ldpe", "lldpe", "aluminium-foil", "bopet");

  @Test
  void slipIsUnderstood() {
    assertThat(Spelling.nearest("aluminum-foil", KNOWN)).contains("aluminium-foil");
    assertThat(Spelling.nearest("bobet", KNOWN)).contains("bopet");
    assertThat(Spelling.nearest("ldep", KNOWN)).contains("ldpe");
  }

  @Test
  void theSameWordInOtherCaseIsMeant() {
    assertThat(Spelling.nearest("LDPE", KNOWN)).contains("ldpe");
    assertThat(Spelling.nearest("IVB", List.of("IVa", "IVb"))).contains("IVb");
  }

  @Test
  void aShortWordIsNotTurnedIntoAnother() {
    assertThat(Spelling.nearest("salt", List.of("fat", "alcohol"))).isEmpty();
  }

  @Test
  void anotherWordIsNotGuessedAt() {
    assertThat(Spelling.nearest("glassine", KNOWN)).isEmpty();
    assertThat(Spelling.suggestion("glassine", KNOWN))
        .isEqualTo("Known here: ldpe, lldpe, aluminium-foil, bopet.");
  }

  @Test
  void ofTwoEquallyNearTheFirstInTheAlphabetIsNamed() {
    assertThat(Spelling.nearest("b", List.of("c", "a"))).contains("a");
  }

  @Test
  void nothingKnownIsSaidSo() {
    assertThat(Spelling.suggestion("x", List.of())).isEqualTo("Nothing is expected here.");
  }
}
