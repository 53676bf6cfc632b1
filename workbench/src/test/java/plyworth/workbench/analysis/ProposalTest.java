package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Proposal.Reason;
import plyworth.workbench.ranking.RankedCandidate;

class ProposalTest {

  private final Ranked ranked = SmallStudy.ranked(SmallStudy.few());
  private final StructureKinds kinds = ranked.kinds();

  @Test
  void gaugeTwinsAreOfOneKindAndAnotherSealantIsNot() {
    Structure thin = structure("ink-wb 1.4 g/m2 @flexo-water / kraft-paper 40 g/m2 / ldpe 15 um");
    Structure thick = structure("ink-wb 1.8 g/m2 @flexo-water / glassine 50 g/m2 / ldpe 30 um");
    Structure other = structure("ink-wb 1.4 g/m2 @flexo-water / kraft-paper 40 g/m2 / eaa 15 um");
    assertThat(kinds.of(thin)).isEqualTo(kinds.of(thick)).isNotEqualTo(kinds.of(other));
    assertThat(kinds.of(thin).barrier()).isEmpty();
    assertThat(kinds.of(thin).printing()).containsExactly("flexo-water");
  }

  @Test
  void noKindIsListedTwiceAndTheFirstIsTheLeader() {
    List<RankedCandidate> best = ranked.bestOfEach(100, kinds::of);
    assertThat(best.get(0)).isEqualTo(ranked.best().get(0));
    assertThat(best)
        .extracting(candidate -> kinds.of(ranked.structure(candidate.path())))
        .doesNotHaveDuplicates();
  }

  @Test
  void theTwoToTrialDifferInWhatHoldsTheBarrier() {
    Proposal proposal = Proposal.of(ranked);
    assertThat(proposal.trials())
        .extracting(Proposal.Pick::reason)
        .containsExactly(Reason.LEADS, Reason.OTHER_BARRIER);
    assertThat(kinds.barrier(proposal.trials().get(0).structure()))
        .isNotEqualTo(kinds.barrier(proposal.trials().get(1).structure()));
  }

  @Test
  void theFallbackHasTodaysBarrierAndIsNotOnTrial() {
    Proposal proposal = Proposal.of(ranked);
    Structure fallback = proposal.fallback().orElseThrow().structure();
    assertThat(kinds.barrier(fallback)).isEqualTo(List.of("aluminium-foil"));
    assertThat(proposal.trials()).extracting(Proposal.Pick::structure).doesNotContain(fallback);
  }

  @Test
  void whereAllShareOneBarrierTheSecondTrialIsOfAnotherKind() {
    Study foilAlone = SmallStudy.few("aluminium-foil 7 um !bright-out");
    Proposal proposal = Proposal.of(SmallStudy.ranked(foilAlone));
    assertThat(proposal.trials().get(1).reason()).isEqualTo(Reason.OTHER_KIND);
    assertThat(proposal.fallback())
        .hasValueSatisfying(pick -> assertThat(pick.reason()).isEqualTo(Reason.TODAY));
  }

  private static Structure structure(String notation) {
    return LayerNotation.readStructure(notation);
  }
}
