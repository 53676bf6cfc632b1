package plyworth.plugins.supply;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** A study that says nothing of a plant: no criterion applies and nothing is blocked. */
final class WithoutPlant implements Scorer, Layerwise {

  private static final Text WHY = Text.of("not-applicable.no-plant");

  @Override
  public Map<String, Text> notApplicable() {
    Map<String, Text> reasons = new LinkedHashMap<>();
    for (Criterion criterion : Criteria.ALL) {
      reasons.put(criterion.id(), WHY);
    }
    return reasons;
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    for (Criterion criterion : Criteria.ALL) {
      outcomes.put(criterion.id(), new Outcome.NotApplicable(WHY));
    }
    return new Assessment(outcomes, List.of(), Map.of());
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return new Explanation(List.of(new Explanation.Note(WHY, Text.of("note.basis"))));
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(this);
  }

  @Override
  public List<StatePart> state() {
    return List.of();
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    // Nothing depends on the layers.
  }

  @Override
  public void finish(Block block) {
    for (double[] column : block.low) {
      Arrays.fill(column, 0, block.size, Double.NaN);
    }
    Arrays.fill(block.blocked, 0, block.size, 0);
  }

  @Override
  public void bound(BoundsBlock block) {
    for (int c = 0; c < block.low.length; c++) {
      Arrays.fill(block.low[c], 0, block.size, Double.NaN);
      Arrays.fill(block.high[c], 0, block.size, Double.NaN);
    }
    Arrays.fill(block.mustBlock, 0, block.size, 0);
    Arrays.fill(block.mayBlock, 0, block.size, 0);
  }
}
