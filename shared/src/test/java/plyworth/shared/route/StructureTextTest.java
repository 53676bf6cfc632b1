package plyworth.shared.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import plyworth.shared.material.MaterialLibrary;

class StructureTextTest {

  private final StructureText text =
      new StructureText(MaterialLibrary.standard(), ProcessLibrary.standard());

  @Test
  void anAliasIsReplacedByTheIdSoThatOneLaminateHasOneSpelling() {
    assertThat(text.read("bleached-kraft 50 g/m2 / pe-ld 15 um @extrusion-coating"))
        .isEqualTo(text.read("kraft-paper 50 g/m2 / ldpe 15 um @extrusion-coating"));
  }

  @Test
  void anUnknownMaterialIsNamedWithTheNearestOne() {
    assertThatThrownBy(() -> text.read("kraft-papper 50 g/m2"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("kraft-papper")
        .hasMessageContaining("Did you mean \"kraft-paper\"?");
  }

  @Test
  void anUnknownProcessIsNamedWithTheNearestOne() {
    assertThatThrownBy(() -> text.read("ldpe 15 um @extrusion-coatin"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Did you mean \"extrusion-coating\"?");
  }
}
