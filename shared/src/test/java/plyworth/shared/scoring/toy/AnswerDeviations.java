package plyworth.shared.scoring.toy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Stream;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** Plugins whose answers for one structure each break one rule. */
final class AnswerDeviations {

  private AnswerDeviations() {}

  static List<Deviation> all() {
    return List.of(
        deviation("sameInputGivesSameAnswer", Forgetful::new),
        deviation("severalThreadsAgree", HomeLoving::new),
        deviation("oddStructuresDoNotThrow", AfraidOfOneLayer::new),
        deviation("everyCriterionIsAnswered", Chatty::new),
        deviation("figuresAreFiniteAndWithinTheirClasses", ThirdOfTwoClasses::new),
        deviation("findingsAreSourcedAndBlocksDeclared", BlocksByWhim::new),
        deviation("parametersAtTheirBoundsStillScore", AfraidOfSpeed::new),
        deviation("scoresWithoutTheFiguresOfOthers", Dependent::new),
        deviation("everyExplanationHasASectionWithItsBasis", Baseless::new));
  }

  static Deviation deviation(String rule, Function<ScoringContext, Scorer> scorer) {
    return new Deviation(
        rule,
        new ToyPlugin() {
          @Override
          public Scorer bind(ScoringContext context) {
            return scorer.apply(context);
          }
        });
  }

  static Assessment with(Assessment assessment, String criterion, Outcome outcome) {
    Map<String, Outcome> outcomes = new LinkedHashMap<>(assessment.outcomes());
    outcomes.put(criterion, outcome);
    return new Assessment(outcomes, assessment.findings(), assessment.provided());
  }

  private static Assessment with(Assessment assessment, Finding finding) {
    List<Finding> findings =
        Stream.concat(assessment.findings().stream(), List.of(finding).stream()).toList();
    return new Assessment(assessment.outcomes(), findings, assessment.provided());
  }

  private static final class Forgetful extends ToyScorer {
    private final AtomicInteger asked = new AtomicInteger();

    Forgetful(ScoringContext context) {
      super(context);
    }

    @Override
    public Explanation explain(Structure structure, Map<Figure, Double> needed) {
      Text count = Text.of("loss.none", asked.incrementAndGet());
      return new Explanation(List.of(new Explanation.Note(count, Text.of("formula"))));
    }
  }

  private static final class HomeLoving extends ToyScorer {
    private final Thread home = Thread.currentThread();

    HomeLoving(ScoringContext context) {
      super(context);
    }

    @Override
    double waste() {
      return Thread.currentThread() == home ? super.waste() : 0;
    }
  }

  private static final class AfraidOfOneLayer extends ToyScorer {
    AfraidOfOneLayer(ScoringContext context) {
      super(context);
    }

    @Override
    public Explanation explain(Structure structure, Map<Figure, Double> needed) {
      structure.layers().get(1);
      return super.explain(structure, needed);
    }
  }

  private static final class Chatty extends ToyScorer {
    Chatty(ScoringContext context) {
      super(context);
    }

    @Override
    public Assessment score(Structure structure, Map<Figure, Double> needed) {
      return with(super.score(structure, needed), "extra", new Outcome.Scored(1));
    }
  }

  private static final class BlocksByWhim extends ToyScorer {
    BlocksByWhim(ScoringContext context) {
      super(context);
    }

    @Override
    public Assessment score(Structure structure, Map<Figure, Double> needed) {
      Text text = Text.of("loss.none", "anything");
      return with(
          super.score(structure, needed),
          new Finding(Finding.Level.BLOCKS, "whim", text, "common practice"));
    }
  }

  private static final class AfraidOfSpeed extends ToyScorer {
    AfraidOfSpeed(ScoringContext context) {
      super(context);
    }

    @Override
    public Assessment score(Structure structure, Map<Figure, Double> needed) {
      if (context.parameter(ToyPlugin.SPEED) >= 200) {
        throw new IllegalStateException("too fast");
      }
      return super.score(structure, needed);
    }
  }

  private static final class Dependent extends ToyScorer {
    Dependent(ScoringContext context) {
      super(context);
    }

    @Override
    double speed(double needed) {
      return needed;
    }
  }

  private static final class Baseless extends ToyScorer {
    Baseless(ScoringContext context) {
      super(context);
    }

    @Override
    public Explanation explain(Structure structure, Map<Figure, Double> needed) {
      return new Explanation(List.of());
    }
  }
}
