package plyworth.shared.scoring;

import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Brief;
import plyworth.shared.plant.Plant;
import plyworth.shared.structure.Structure;

/**
 * What every plugin must keep to. Extend it in the plugin's own tests and give the plugin; each
 * test is one rule.
 */
public abstract class PluginConformance {

  /** The plugin under test. */
  protected abstract ScoringPlugin plugin();

  /** Briefs it is tried on. */
  protected List<Brief> briefs() {
    return SampleBriefs.all();
  }

  /** Structures it is tried on. */
  protected List<Structure> structures() {
    return SampleStructures.all();
  }

  /** What is known of today's pack. */
  protected Today today() {
    return Today.UNKNOWN;
  }

  /** The plant it is tried in; empty for none. */
  protected Optional<Plant> plant() {
    return Optional.empty();
  }

  /** Parameters set by the user, by id; the others stand at their standard. */
  protected Map<String, Double> settings() {
    return Map.of();
  }

  private List<Trial> trials() {
    return Trial.of(plugin(), briefs(), today(), plant(), settings());
  }

  private List<Trial> layerwiseTrials() {
    List<Trial> trials = trials();
    assumeTrue(trials.get(0).scorer().layerwise().isPresent(), "no layerwise form");
    return trials;
  }

  @Test
  public final void idsAreWellFormedAndUnique() {
    DeclarationRules.idsAreWellFormedAndUnique(plugin());
  }

  @Test
  public final void valueFunctionsFollowTheDirectionOfTheirCriterion() {
    DeclarationRules.valueFunctionsFollowTheirDirection(plugin());
  }

  @Test
  public final void declaredPropertiesAgreeWithTheLibrary() {
    DeclarationRules.propertiesAgreeWithTheLibrary(plugin());
  }

  @Test
  public final void settingsAndWeightsSurviveTheStudyFile() {
    FileRules.settingsAndWeightsSurviveTheStudyFile(plugin());
  }

  @Test
  public final void cautionsSaySomething() {
    DeclarationRules.cautionsSaySomething(plugin());
  }

  @Test
  public final void neitherDrawsNorOpensWindows() throws IOException {
    DeclarationRules.knowsNoWindows(plugin());
  }

  @Test
  public final void everyTextMakesASentence() {
    TextRules.everyTextMakesASentence(plugin(), trials(), structures());
  }

  @Test
  public final void everyExplanationHasASectionWithItsBasis() {
    TextRules.everyExplanationHasABasis(trials(), structures());
  }

  @Test
  public final void sameInputGivesSameAnswer() {
    RepeatRules.sameInputGivesSameAnswer(trials(), structures());
  }

  @Test
  public final void severalThreadsAgree() {
    RepeatRules.severalThreadsAgree(trials(), structures());
  }

  @Test
  public final void oddStructuresDoNotThrow() {
    AnswerRules.nothingThrows(trials(), SampleStructures.odd());
  }

  @Test
  public final void everyCriterionIsAnswered() {
    AnswerRules.everyCriterionIsAnswered(trials(), structures());
  }

  @Test
  public final void figuresAreFiniteAndWithinTheirClasses() {
    AnswerRules.figuresAreFiniteAndWithinTheirClasses(trials(), structures());
  }

  @Test
  public final void findingsAreSourcedAndBlocksDeclared() {
    AnswerRules.findingsAreSourcedAndBlocksDeclared(trials(), structures());
  }

  @Test
  public final void parametersAtTheirBoundsStillScore() {
    AnswerRules.parametersAtTheirBoundsStillScore(trials(), structures());
  }

  @Test
  public final void scoresWithoutTheFiguresOfOthers() {
    assumeFalse(plugin().needs().isEmpty(), "needs no figures");
    AnswerRules.scoresWithoutTheFiguresOfOthers(plugin(), briefs(), structures());
  }

  @Test
  public final void layerwiseFormIsOfferedAlwaysOrNever() {
    LayerwiseRules.offeredAlwaysOrNever(trials());
  }

  @Test
  public final void contributionsJoinInAnyBracketing() {
    LayerwiseRules.contributionsJoinInAnyBracketing(layerwiseTrials(), structures());
  }

  @Test
  public final void layerwiseFormAgreesWithTheWholeStructure() {
    LayerwiseRules.agreesWithTheWholeStructure(layerwiseTrials(), structures());
  }

  @Test
  public final void formForOneCriterionAgreesWithTheFormForAll() {
    LayerwiseRules.formForOneCriterionAgreesWithTheFormForAll(layerwiseTrials(), structures());
  }

  @Test
  public final void criteriaSaidToAddUpAreSums() {
    LayerwiseRules.criteriaSaidToAddUpAreSums(layerwiseTrials(), structures());
  }

  @Test
  public final void boundsEncloseWhatCanStillBecome() {
    BoundsRules.boundsEncloseWhatCanStillBecome(layerwiseTrials(), structures());
  }
}
