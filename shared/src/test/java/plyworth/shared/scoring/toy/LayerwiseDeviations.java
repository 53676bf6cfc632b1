package plyworth.shared.scoring.toy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.structure.Layer;

/** Plugins whose layerwise form each breaks one rule. */
final class LayerwiseDeviations {

  private LayerwiseDeviations() {}

  static List<Deviation> all() {
    return List.of(
        AnswerDeviations.deviation(
            "layerwiseFormIsOfferedAlwaysOrNever",
            context ->
                new ToyScorer(context) {
                  @Override
                  public Optional<Layerwise> layerwise() {
                    boolean first = context.brief().product().name().equals("sugar");
                    return first ? Optional.empty() : super.layerwise();
                  }
                }),
        deviation("contributionsJoinInAnyBracketing", HalfBits::new),
        deviation("layerwiseFormAgreesWithTheWholeStructure", ForgetsToBlock::new),
        deviation("layerwiseFormAgreesWithTheWholeStructure", LeavesOldFigures::new),
        deviation("layerwiseFormAgreesWithTheWholeStructure", NothingIsUnknown::new),
        deviation("formForOneCriterionAgreesWithTheFormForAll", ForgetsTheMass::new),
        deviation("criteriaSaidToAddUpAreSums", FlowForMass::new),
        deviation("boundsEncloseWhatCanStillBecome", TooSure::new),
        deviation("boundsEncloseWhatCanStillBecome", BlocksTooSoon::new));
  }

  private static Deviation deviation(String rule, Function<ToyScorer, Layerwise> form) {
    return AnswerDeviations.deviation(
        rule,
        context ->
            new ToyScorer(context) {
              @Override
              public Optional<Layerwise> layerwise() {
                return Optional.of(form.apply(this));
              }
            });
  }

  private static final class HalfBits extends ToyLayerwise {
    HalfBits(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void contribute(Layer layer, Layer outer, double[] state) {
      super.contribute(layer, outer, state);
      state[2] += 0.5;
    }
  }

  private static final class ForgetsToBlock extends ToyLayerwise {
    ForgetsToBlock(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void finish(Block block) {
      super.finish(block);
      java.util.Arrays.fill(block.blocked, 0, block.size, 0);
    }

    @Override
    public void bound(BoundsBlock block) {
      super.bound(block);
      block.mustBlock[0] = 0;
    }
  }

  private static final class LeavesOldFigures extends ToyLayerwise {
    LeavesOldFigures(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void finish(Block block) {
      double last = block.low[0][block.size - 1];
      super.finish(block);
      block.low[0][block.size - 1] = last;
    }

    @Override
    public void bound(BoundsBlock block) {
      super.bound(block);
      block.high[0][0] = Double.POSITIVE_INFINITY;
    }
  }

  private static final class NothingIsUnknown extends ToyLayerwise {
    NothingIsUnknown(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void contribute(Layer layer, Layer outer, double[] state) {
      super.contribute(layer, outer, state);
      state[1] = Double.isNaN(state[1]) ? 0 : state[1];
    }
  }

  private static final class ForgetsTheMass extends ToyLayerwise {
    ForgetsTheMass(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public Layerwise only(Set<String> criteria) {
      return new Massless(scorer);
    }
  }

  /** What no criterion but the mass needs, a blocking rule may. */
  private static final class Massless extends ToyLayerwise {
    Massless(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void contribute(Layer layer, Layer outer, double[] state) {
      super.contribute(layer, outer, state);
      state[0] = 0;
    }
  }

  private static final class FlowForMass extends ToyLayerwise {
    FlowForMass(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public OptionalInt sumOf(String criterion) {
      return criterion.equals("flow") ? OptionalInt.of(0) : super.sumOf(criterion);
    }
  }

  private static final class TooSure extends ToyLayerwise {
    TooSure(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void bound(BoundsBlock block) {
      super.bound(block);
      block.high[0][0] = block.low[0][0];
    }
  }

  private static final class BlocksTooSoon extends ToyLayerwise {
    BlocksTooSoon(ToyScorer scorer) {
      super(scorer);
    }

    @Override
    public void bound(BoundsBlock block) {
      super.bound(block);
      block.mustBlock[0] = block.mayBlock[0];
    }
  }
}
