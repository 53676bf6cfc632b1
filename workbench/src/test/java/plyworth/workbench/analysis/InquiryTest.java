package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.engine.graph.LayerEdit;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.ranking.Group;

class InquiryTest {

  private static final PluginCatalog PLUGINS = BrothStudy.plugins();
  private static final Ranked FREE = ranked(BrothStudy.text());
  private static final Structure BEST = FREE.structure(FREE.best().get(0).path());
  private static final double STIFFNESS = figure("machinability/bending-stiffness");

  private static Ranked ranked(String study) {
    return Ranked.of(
        Compiled.of(Prepared.of(BrothStudy.read(study), PLUGINS), () -> false),
        1,
        Optional.empty(),
        Progress.NONE);
  }

  private static double figure(String criterion) {
    int index = FREE.ranking().model().indexOf(criterion).orElseThrow();
    return FREE.sheet(BEST).outcomes().get(index).orUnknown();
  }

  private static String limit(String criterion, String bound, double figure) {
    return "{ \"criterion\": \"%s\", \"bound\": \"%s\", \"figure\": %s, \"reason\": \"\" }"
        .formatted(criterion, bound, figure);
  }

  private static Ranked limited(String... limits) {
    return ranked(
        BrothStudy.with("\"limits\": [ ]", "\"limits\": [" + String.join(", ", limits) + "]"));
  }

  private static Inquiry inquiry(Ranked ranked, String structure) {
    return Inquiry.of(ranked, LayerNotation.readStructure(structure), 3);
  }

  @Test
  void nothingKeepsARankedCandidateOut() {
    Inquiry inquiry = Inquiry.of(FREE, BEST, 3);
    assertThat(inquiry.hindrances()).isEmpty();
    assertThat(inquiry.admission()).isEqualTo(new Admission(List.of(), List.of()));
    assertThat(inquiry.nearest()).isEmpty();
    assertThat(inquiry.oneLimitSuffices()).isFalse();
  }

  @Test
  void aLimitRelaxedToTheFigureLetsTheStructureInAndAnythingTighterDoesNot() {
    for (String bound : new String[] {"at-most", "at-least"}) {
      double factor = bound.equals("at-most") ? 0.9 : 1.1;
      Ranked tight = limited(limit("machinability/bending-stiffness", bound, factor * STIFFNESS));
      Inquiry inquiry = Inquiry.of(tight, BEST, 3);
      assertThat(inquiry.sheet().group()).isEqualTo(Group.EXCLUDED);
      assertThat(inquiry.oneLimitSuffices()).isTrue();
      Hindrance.BrokenLimit broken = (Hindrance.BrokenLimit) inquiry.hindrances().get(0);
      assertThat(broken.figure()).isEqualTo(STIFFNESS);
      double relaxed = broken.relaxed(6);
      double tighter = relaxed * (bound.equals("at-most") ? 1 - 1e-5 : 1 + 1e-5);
      assertThat(standing(bound, relaxed)).isEqualTo(Group.RANKED);
      assertThat(standing(bound, tighter)).isEqualTo(Group.EXCLUDED);
    }
  }

  private static Group standing(String bound, double figure) {
    Ranked ranked = limited(limit("machinability/bending-stiffness", bound, figure));
    return ranked.sheet(BEST).group();
  }

  @Test
  void oneOfTwoBrokenLimitsDoesNotSuffice() {
    double cost = figure("cost/packed-per-1000");
    Ranked tight =
        limited(
            limit("machinability/bending-stiffness", "at-most", 0.9 * STIFFNESS),
            limit("cost/packed-per-1000", "at-most", 0.9 * cost));
    Inquiry inquiry = Inquiry.of(tight, BEST, 3);
    assertThat(inquiry.hindrances())
        .extracting(Hindrance::name)
        .containsExactly(
            "the limit on machinability/bending-stiffness", "the limit on cost/packed-per-1000");
    assertThat(inquiry.oneLimitSuffices()).isFalse();
  }

  @Test
  void whatALimitCannotJudgeIsNamedByTheMissingDatum() {
    Ranked ranked = limited(limit("machinability/seal-window", "at-least", 1));
    Inquiry inquiry = inquiry(ranked, "evoh-44 20 um");
    assertThat(inquiry.hindrances())
        .filteredOn(Hindrance.UnknownFigure.class::isInstance)
        .extracting(Hindrance::name)
        .containsExactly("evoh-44 has no seal-initiation");
  }

  @Test
  void aBlockIsNamedByItsRule() {
    Inquiry inquiry = inquiry(FREE, "kraft-paper 40 g/m2");
    assertThat(inquiry.sheet().group()).isEqualTo(Group.BLOCKED);
    assertThat(inquiry.hindrances()).extracting(Hindrance::name).contains("barrier/does-not-keep");
  }

  @Test
  void theStudyLacksWhatNoPositionOffersAndTheRulesThatAreBroken() {
    Inquiry inquiry = inquiry(FREE, "kraft-paper 45 g/m2 / ldpe 25 um @extrusion-coating");
    assertThat(inquiry.admission().rules())
        .extracting(rule -> rule.id())
        .containsExactly("a-print", "outside-shows-the-print");
    assertThat(inquiry.admission().options())
        .extracting(added -> added.position() + ": " + added.option())
        .containsExactly("0: nothing", "1: kraft-paper 45 g/m2");
  }

  @Test
  void theNearestThatIsRankedHasNoRankedOneBeforeIt() {
    String blocked =
        "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 45 g/m2 / ldpe 25 um @extrusion-coating";
    Inquiry inquiry = Inquiry.of(FREE, LayerNotation.readStructure(blocked), 132);
    assertThat(inquiry.looked()).isEqualTo(132);
    assertThat(inquiry.nearest().get(0).near().edits())
        .extracting(LayerEdit::kind)
        .containsExactly(LayerEdit.Kind.ADJUST);
    Inquiry.Neighbour ranked = inquiry.nearestRanked().orElseThrow();
    int place = inquiry.nearest().indexOf(ranked);
    assertThat(ranked.sheet().group()).isEqualTo(Group.RANKED);
    assertThat(inquiry.nearest().subList(0, place))
        .isNotEmpty()
        .noneMatch(n -> n.sheet().group() == Group.RANKED);
    assertThat(Inquiry.of(FREE, LayerNotation.readStructure(blocked), 1).nearestRanked())
        .map(n -> n.near().path())
        .hasValue(ranked.near().path());
  }

  @Test
  void aRoundedLimitStaysOnTheSideThatIsAllowed() {
    Limit most = new Limit("c", Limit.Bound.AT_MOST, 1, "");
    Limit least = new Limit("c", Limit.Bound.AT_LEAST, 9, "");
    assertThat(new Hindrance.BrokenLimit(most, 1.23401).relaxed(4)).isEqualTo(1.235);
    assertThat(new Hindrance.BrokenLimit(least, 1.23499).relaxed(4)).isEqualTo(1.234);
    assertThat(new Hindrance.BrokenLimit(least, -1.23401).relaxed(4)).isEqualTo(-1.235);
    assertThat(new Hindrance.BrokenLimit(most, 1.5).relaxed(4)).isEqualTo(1.5);
  }
}
