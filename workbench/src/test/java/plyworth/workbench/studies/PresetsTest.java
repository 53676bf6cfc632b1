package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Weighed;

/** What moving between the weightings of a study does to the one that leads. */
class PresetsTest {

  static final List<String> STUDIES = Examples.ALL;

  private static final String CLASS = "recyclability/class";
  private static final String MARGIN = "barrier/margin";
  private static final String COST = "cost/packed-per-1000";

  private static Desk desk(String name) {
    return Examples.LARGE.contains(name) ? Examples.thinned(name) : Examples.whole(name);
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void noWeightingLiftsABlock(String name) {
    Desk desk = desk(name);
    long blocked = desk.ranked("balanced").ranking().counts().blocked();
    assertThat(blocked).isPositive();
    for (Weighting weighting : desk.study().weightings()) {
      assertThat(desk.ranked(weighting.name()).ranking().counts().blocked()).isEqualTo(blocked);
      assertThat(desk.leader(weighting.name()).blocks()).isEmpty();
    }
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void theLeaderOfAWeightingIsTheBetterInWhatThatWeightingCaresMoreFor(String name) {
    Desk desk = desk(name);
    for (Weighting a : desk.study().weightings()) {
      for (Weighting b : desk.study().weightings()) {
        Ranked underA = desk.ranked(a.name());
        Ranked underB = desk.ranked(b.name());
        double gain = 0;
        for (int c = 0; c < underA.ranking().model().criteria().size(); c++) {
          gain += (weight(underA, c) - weight(underB, c)) * (worth(underA, c) - worth(underB, c));
        }
        assertThat(gain).as("%s against %s", a.name(), b.name()).isGreaterThan(-1e-6);
      }
    }
  }

  private static double weight(Ranked ranked, int criterion) {
    Weighed weighed = ranked.ranking().model().criteria().get(criterion);
    return weighed.weight();
  }

  private static double worth(Ranked ranked, int criterion) {
    RankedCandidate leader = ranked.best().get(0);
    return leader.valuation().parts().get(criterion).valueLow();
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void theLeaderForSustainabilityIsAtLeastAsRecyclableAsTheLeaderForProtection(String name) {
    Desk desk = desk(name);
    assertThat(desk.leader("sustainability-led").figure(CLASS))
        .isGreaterThanOrEqualTo(desk.leader("protection-led").figure(CLASS));
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void theLeaderForProtectionKeepsAtLeastAsLongAsAnyOtherLeader(String name) {
    Desk desk = desk(name);
    for (Weighting weighting : desk.study().weightings()) {
      assertThat(desk.leader("protection-led").margin())
          .isGreaterThanOrEqualTo(desk.leader(weighting.name()).margin());
    }
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void theLeaderForCostIsNoDearerThanAnyOtherLeader(String name) {
    Desk desk = desk(name);
    for (Weighting weighting : desk.study().weightings()) {
      assertThat(desk.leader("cost-led").figure(COST))
          .isLessThanOrEqualTo(desk.leader(weighting.name()).figure(COST));
    }
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void everyLeaderKeepsTheProductAndBeatsTheStructureOfToday(String name) {
    Desk desk = desk(name);
    for (Weighting weighting : desk.study().weightings()) {
      Ranked ranked = desk.ranked(weighting.name());
      assertThat(desk.leader(weighting.name()).figure(MARGIN)).isGreaterThanOrEqualTo(1);
      assertThat(ranked.best().get(0).value()).isGreaterThan(ranked.baseline().valuation().value());
    }
  }
}
