package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BriefTest {

  @Test
  void yearsAreInOrder() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Market("eu", 2030, 2029))
        .withMessageContaining("before its launch in 2030");
  }

  @Test
  void climateIsOnEarth() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Climate("oven", 180, 10))
        .withMessageContaining("the storage temperature is 180.0");
    assertThatIllegalArgumentException().isThrownBy(() -> new Climate("wet", 20, 101));
  }

  @Test
  void contentsAreSorted() {
    Product product =
        new Product(
            "soup",
            Product.Form.POWDER,
            10,
            Set.of("fines", "acid", "fat"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertThat(product.contents()).containsExactly("acid", "fat", "fines");
    assertThat(Product.CONTENTS).containsAll(product.contents());
  }
}
