package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Note;

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

  /** 34.39/9 − 1.8 − 0.108: 90 % PP (publicnow.com, 15 June 2021) with that adhesive and metal. */
  @Test
  void inkCeilingOfALightlyPrintedPolypropyleneLaminate() {
    assertThat(InverseDesign.restFor(34.39, 0.90) - 1.8 - 0.108).isEqualTo(1.91, within(0.005));
  }

  @Test
  void notesSayWhatTheNextGradeTakes() {
    List<Note> notes = notes(Laminates.PAPER_PE);
    Note next =
        notes.stream().filter(n -> n.title().key().equals("change.paper")).findFirst().get();
    assertThat((Double) next.title().arguments().get(0)).isEqualTo(90, within(1e-9));
    assertThat((Double) next.title().arguments().get(1)).isEqualTo(135, within(1e-9));
    assertThat((Double) next.title().arguments().get(3)).isEqualTo(60.0 / 9, within(1e-9));
  }

  /** With the density 1.19 g/cm³ of the library: 0.05·M₀/(1.19 − 0.05·0.27). */
  @Test
  void notesBoundTheBarrierGauge() {
    Note barrier =
        notes(Laminates.MONO_PE_EVOH).stream()
            .filter(n -> n.title().key().equals("change.barrier"))
            .findFirst()
            .get();
    double gauge = 3.54 / 1.19;
    double without = 83.23 - 3.54 + gauge * 0.92;
    assertThat((Double) barrier.title().arguments().get(1))
        .isEqualTo(0.05 * without / (1.19 - 0.05 * 0.27), within(1e-9));
  }

  private static List<Note> notes(String notation) {
    Explanation explanation = Trial.in("eu").explain(notation);
    return explanation.sections().stream()
        .filter(Note.class::isInstance)
        .map(Note.class::cast)
        .toList();
  }
}
