package plyworth.shared.scoring.toy;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Structure;

/** Answers with a class number that it has not declared, consistently. */
final class ThirdOfTwoClasses extends ToyScorer {

  private static final int OPACITY = 4;
  private static final double THIRD = 2;

  ThirdOfTwoClasses(ScoringContext context) {
    super(context);
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    return AnswerDeviations.with(
        super.score(structure, needed), "opacity", new Outcome.Scored(THIRD));
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(
        new ToyLayerwise(this) {
          @Override
          public void finish(Block block) {
            super.finish(block);
            Arrays.fill(block.low[OPACITY], 0, block.size, THIRD);
          }

          @Override
          public void bound(BoundsBlock block) {
            super.bound(block);
            Arrays.fill(block.low[OPACITY], 0, block.size, THIRD);
            Arrays.fill(block.high[OPACITY], 0, block.size, THIRD);
          }
        });
  }
}
