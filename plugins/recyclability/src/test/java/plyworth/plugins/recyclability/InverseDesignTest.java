package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Table;

class InverseDesignTest {

  /** 70·0.05/0.95: the 5 % limit is in Decision (EU) 2019/665. */
  @Test
  void seventyGramsOfPaperBearLittlePolymerBeforeTheyBecomeAComposite() {
    assertThat(InverseDesign.targetFor(70, 0.05)).isEqualTo(3.68, within(0.005));
  }

  /** 0.05·82.45/(1.18 − 0.05·0.26), solved by hand. */
  @Test
  void evohGaugeForFivePercentOfAPolyethyleneFilm() {
    assertThat(InverseDesign.barrierGaugeUm(0.05, 82.45, 1.18, 0.92))
        .isEqualTo(3.53, within(0.005));
  }

  /**
   * 34.39/9 − 1.8 − 0.108: 90 % PP (press notice of 15 June 2021 on design guidelines for flexible
   * polyolefins, name withheld) with that adhesive and metal.
   */
  @Test
  void inkCeilingOfALightlyPrintedPolypropyleneLaminate() {
    assertThat(InverseDesign.restFor(34.39, 0.90) - 1.8 - 0.108).isEqualTo(1.91, within(0.005));
  }

  @Test
  void explanationSaysWhatTheNextGradeTakes() {
    Table steps =
        sections(Laminates.PAPER_PE, Table.class).stream()
            .filter(t -> t.title().key().equals("change.paper"))
            .findFirst()
            .get();
    assertThat(steps.rows().get(0)).containsExactly(80.0, 60.0, 15.0);
    List<Object> ninety = steps.rows().get(3);
    assertThat((Double) ninety.get(0)).isEqualTo(90, within(1e-9));
    assertThat((Double) ninety.get(1)).isEqualTo(135, within(1e-9));
    assertThat((Double) ninety.get(2)).isEqualTo(60.0 / 9, within(1e-9));
  }

  @Test
  void whatDisqualifiesMustGoFirst() {
    assertThat(sections(Laminates.POLYESTER_FOIL, Note.class))
        .filteredOn(n -> n.title().key().equals("change.first"))
        .singleElement()
        .satisfies(
            n ->
                assertThat(n.title().arguments().get(0).toString())
                    .contains("aluminium foil", "polyester"));
  }

  /** With the density 1.19 g/cm³ of the library: 0.05·M₀/(1.19 − 0.05·0.27). */
  @Test
  void explanationBoundsTheBarrierGauge() {
    Note barrier =
        sections(Laminates.MONO_PE_EVOH, Note.class).stream()
            .filter(n -> n.title().key().equals("change.barrier"))
            .findFirst()
            .get();
    double gauge = 3.54 / 1.19;
    double without = 83.23 - 3.54 + gauge * 0.92;
    assertThat((Double) barrier.title().arguments().get(1))
        .isEqualTo(0.05 * without / (1.19 - 0.05 * 0.27), within(1e-9));
  }

  private static <S> List<S> sections(String notation, Class<S> kind) {
    Explanation explanation = Trial.in("eu").explain(notation);
    return explanation.sections().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
