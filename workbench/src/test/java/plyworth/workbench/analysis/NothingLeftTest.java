package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.engine.table.Progress;

/** Why a study has no candidate, and why none of its candidates is ranked. */
class NothingLeftTest {

  @Test
  void theRuleThatForbidsEveryStructureIsFound() {
    String study = BrothStudy.with("\"only\": \"sealable\"", "\"only\": \"foil\"");
    assertThat(EmptyOffer.obstacles(BrothStudy.read(study)))
        .singleElement()
        .satisfies(
            obstacle -> {
              assertThat(obstacle.rule().id()).isEqualTo("innermost-seals");
              assertThat(obstacle.index()).isEqualTo(6);
              assertThat(obstacle.candidates()).isEqualTo(BigInteger.valueOf(132));
            });
  }

  @Test
  void whereTwoRulesEachForbidEverythingNoneAloneIsToBlame() {
    String study =
        BrothStudy.with("\"only\": \"sealable\"", "\"only\": \"foil\"")
            .replace("\"only\": \"-print\"", "\"only\": \"print\"");
    assertThat(EmptyOffer.obstacles(BrothStudy.read(study))).isEmpty();
  }

  @Test
  void whatKeepsCandidatesOutIsCountedMostFrequentFirst() {
    String study = BrothStudy.with("\"headspace_percent\": 1 ", "\"headspace_percent\": 21 ");
    Ranked ranked =
        Ranked.of(
            Scored.of(
                Compiled.of(Prepared.of(BrothStudy.read(study), BrothStudy.plugins()), () -> false),
                Progress.NONE),
            5);
    Hindrances hindrances = Hindrances.of(ranked);
    assertThat(hindrances.looked()).isEqualTo(132);
    assertThat(hindrances.reasons().get(0).name()).isEqualTo("barrier/does-not-keep");
    assertThat(hindrances.reasons().get(0).candidates()).isEqualTo(132);
    assertThat(hindrances.reasons())
        .isSortedAccordingTo((a, b) -> Integer.compare(b.candidates(), a.candidates()));
  }
}
