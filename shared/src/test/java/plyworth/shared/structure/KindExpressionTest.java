package plyworth.shared.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Set;
import org.junit.jupiter.api.Test;

class KindExpressionTest {

  private static boolean matches(String expression, String... tags) {
    return new KindExpression(expression).matches(Set.of(tags));
  }

  @Test
  void allTagsOfAnAlternativeMustHold() {
    assertThat(matches("web film", "web", "film", "oriented")).isTrue();
    assertThat(matches("web film", "web")).isFalse();
  }

  @Test
  void minusForbidsATag() {
    assertThat(matches("web -porous", "web")).isTrue();
    assertThat(matches("web -porous", "web", "porous")).isFalse();
    assertThat(matches("-bond")).isTrue();
  }

  @Test
  void oneAlternativeIsEnough() {
    assertThat(matches("web -porous | foil", "web", "porous", "foil")).isTrue();
    assertThat(matches("web -porous|foil", "web", "porous")).isFalse();
  }

  @Test
  void hyphenWithinATagIsNoMinus() {
    assertThat(matches("ldpe-biobased", "ldpe-biobased")).isTrue();
    assertThat(matches("@flexo-water", "@flexo-water")).isTrue();
  }

  @Test
  void emptyAlternativeIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new KindExpression(" "));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new KindExpression("web |"))
        .withMessageContaining("\"web |\" names no kind of layer");
  }
}
