package plyworth.workbench.desktop.session;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;

class MovementTest {

  private static final Ranked RANKED = SmallStudy.ranked(SmallStudy.few());
  private static final BestList KINDS = BestList.kinds(RANKED, 10);

  private final Movement movement = new Movement();

  @Test
  void nothingIsToldBeforeTheRankingAfterTheEditIsThere() {
    movement.begin(() -> "price", RANKED, KINDS);
    assertThat(movement.told()).isEmpty();
    movement.arrive(RANKED, KINDS);
    assertThat(movement.told()).hasValueSatisfying(t -> assertThat(t.move().sameOrder()).isTrue());
  }

  @Test
  void aRankingWithoutAnEditTellsNothing() {
    movement.arrive(RANKED, KINDS);
    assertThat(movement.told()).isEmpty();
  }

  @Test
  void anEditBeforeTheFirstRankingTellsNothing() {
    movement.begin(() -> "price", null, null);
    movement.arrive(RANKED, KINDS);
    assertThat(movement.told()).isEmpty();
  }

  @Test
  void theNextEditForgets() {
    movement.begin(() -> "price", RANKED, KINDS);
    movement.arrive(RANKED, KINDS);
    movement.forget();
    movement.arrive(RANKED, KINDS);
    assertThat(movement.told()).isEmpty();
  }
}
