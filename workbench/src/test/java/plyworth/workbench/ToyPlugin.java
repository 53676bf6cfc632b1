package plyworth.workbench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.PluginCard;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundPlugin;

/** A plugin whose figures are made up from the names of layers; one criterion per state part. */
public class ToyPlugin implements ScoringPlugin, Scorer, Layerwise {

  private final String id;
  private final List<Join> joins;
  private final List<Figure> provides;
  private final List<Figure> needs;
  private final boolean layerwise;
  private final boolean blocks;
  private final Map<String, Text> notApplicable = new LinkedHashMap<>();
  private double unknownShare;
  private double apart;
  private boolean byAmount;

  /** A plugin with one part per join. */
  public ToyPlugin(
      String id,
      List<Join> joins,
      List<Figure> provides,
      List<Figure> needs,
      boolean layerwise,
      boolean blocks) {
    this.id = id;
    this.joins = joins;
    this.provides = provides;
    this.needs = needs;
    this.layerwise = layerwise;
    this.blocks = blocks;
  }

  /** Makes a share of the contributions unknown. */
  public ToyPlugin unknown(double share) {
    unknownShare = share;
    return this;
  }

  /**
   * Lets the layerwise form only bound the first criterion, up to this much to either side, and
   * leave some candidates undecided.
   */
  public ToyPlugin apart(double most) {
    apart = most;
    return this;
  }

  /** Makes figures up from amounts as well, those of layers and of their outer neighbours. */
  public ToyPlugin byAmount() {
    byAmount = true;
    return this;
  }

  /** Makes a criterion not applicable. */
  public ToyPlugin notApplicable(int criterion) {
    notApplicable.put("c" + criterion, Text.of("none"));
    return this;
  }

  /** The plugin bound to itself. */
  public BoundPlugin bound() {
    return new BoundPlugin(this, this);
  }

  @Override
  public PluginCard card() {
    return new PluginCard(id, Text.of(id), "1", List.of(Text.of("caution")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return List.of();
  }

  @Override
  public List<Parameter> parameters() {
    return List.of();
  }

  @Override
  public List<Criterion> criteria() {
    List<Criterion> criteria = new ArrayList<>();
    for (int c = 0; c < joins.size(); c++) {
      criteria.add(
          new Criterion(
              "c" + c,
              Text.of("c"),
              "",
              "",
              Criterion.Direction.LOWER,
              c % 2 == 0
                  ? ValueFunction.linear(-2, 0, 3, 1, 9, 0.25)
                  : ValueFunction.logarithmic(0.3, 1, 12, 0.4, 40, 0),
              1,
              List.of(),
              Text.of("formula")));
    }
    return criteria;
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return List.of(
        new BlockingRule("odd", Text.of("odd")), new BlockingRule("high", Text.of("high")));
  }

  @Override
  public List<Figure> provides() {
    return provides;
  }

  @Override
  public List<Figure> needs() {
    return needs;
  }

  @Override
  public Scorer bind(ScoringContext context) {
    return this;
  }

  @Override
  public Map<String, Text> notApplicable() {
    return notApplicable;
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return layerwise ? Optional.of(this) : Optional.empty();
  }

  @Override
  public List<StatePart> state() {
    return joins.stream().map(join -> new StatePart("part", join)).toList();
  }

  /** Random components, none negative; the centroid of a layer lies within its thickness. */
  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    String name = id + layer.material() + (outer == null ? "" : outer.material().substring(0, 2));
    if (byAmount) {
      name += layer.amount() + " " + (outer == null ? 0 : outer.amount());
    }
    Random random = new Random(name.hashCode() * 7919L);
    int at = 0;
    for (Join join : joins) {
      for (int c = at; c < at + join.size(); c++) {
        state[c] =
            join == Join.BITS ? random.nextInt(64) & random.nextInt(64) : random.nextDouble() * 3;
        state[c] = random.nextDouble() < unknownShare ? Double.NaN : state[c];
      }
      if (join == Join.BENDING) {
        state[at + 1] *= state[at + 3] / 3;
      }
      at += join.size();
    }
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    double[] joined = new double[StatePart.size(state())];
    StatePart.neutral(state(), joined);
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      double[] own = new double[joined.length];
      StatePart.neutral(state(), own);
      contribute(layer, outer, own);
      double[] longer = new double[joined.length];
      StatePart.join(state(), joined, own, longer);
      joined = longer;
      outer = layer;
    }
    double shift = needs.isEmpty() ? 0 : needed.getOrDefault(needs.get(0), 1.5);
    double[] figures = figures(joined, shift);
    return assessment(figures, blocked(figures));
  }

  private Assessment assessment(double[] figures, long bits) {
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    for (int c = 0; c < figures.length; c++) {
      outcomes.put(
          "c" + c,
          notApplicable.containsKey("c" + c)
              ? new Outcome.NotApplicable(notApplicable.get("c" + c))
              : Double.isNaN(figures[c])
                  ? new Outcome.DataMissing("m", "p")
                  : new Outcome.Scored(figures[c]));
    }
    List<Finding> findings = new ArrayList<>();
    for (int rule = 0; rule < 2; rule++) {
      if ((bits >> rule & 1) == 1) {
        String name = blockingRules().get(rule).id();
        findings.add(new Finding(Finding.Level.BLOCKS, name, Text.of("t"), "common practice"));
      }
    }
    Map<Figure, Double> provided = new EnumMap<>(Figure.class);
    provides.forEach(figure -> provided.put(figure, figures[0] / 4));
    return new Assessment(outcomes, findings, provided);
  }

  /** One figure per part: its components added up, and what is needed. */
  private double[] figures(double[] state, double shift) {
    double[] figures = new double[joins.size()];
    int at = 0;
    for (int c = 0; c < figures.length; c++) {
      figures[c] = shift;
      for (int end = at + joins.get(c).size(); at < end; at++) {
        figures[c] +=
            joins.get(c) == Join.BITS ? Long.bitCount((long) state[at]) + 0 * state[at] : state[at];
      }
    }
    return figures;
  }

  private long blocked(double[] figures) {
    long odd = (long) (figures[0] * 8) % 7 == 1 ? 1 : 0;
    long high = figures[figures.length - 1] > 30 ? 2 : 0;
    return blocks ? odd | high : 0;
  }

  @Override
  public void finish(Block block) {
    for (int j = 0; j < block.size; j++) {
      double[] state = new double[block.states.length];
      for (int c = 0; c < state.length; c++) {
        state[c] = block.states[c][j];
      }
      double shift = needs.isEmpty() ? 0 : block.needed[0][j];
      double[] figures = figures(state, shift);
      for (int c = 0; c < figures.length; c++) {
        block.low[c][j] = figures[c];
      }
      for (double[] provided : block.provided) {
        provided[j] = figures[0] / 4;
      }
      block.blocked[j] = blocked(figures);
    }
    if (apart > 0) {
      widen(block);
    }
  }

  private void widen(Block block) {
    double[] high = block.apart(0);
    for (int j = 0; j < block.size; j++) {
      double figure = block.low[0][j];
      double share = Math.abs(figure * 1000 % 1);
      high[j] = figure + apart * share;
      block.low[0][j] = figure - apart * (1 - share);
      block.undecided[j] = share < 0.25;
      block.blocked[j] = block.undecided[j] ? 0 : block.blocked[j];
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    double[] low = new double[block.stateLow.length];
    double[] high = new double[low.length];
    for (int j = 0; j < block.size; j++) {
      for (int c = 0; c < low.length; c++) {
        low[c] = block.stateLow[c][j];
        high[c] = block.stateHigh[c][j];
      }
      boundOne(
          block,
          j,
          figures(low, needs.isEmpty() ? 0 : block.neededLow[0][j]),
          figures(high, needs.isEmpty() ? 0 : block.neededHigh[0][j]));
    }
  }

  /** No component is negative, so figures rise with each of them. */
  private void boundOne(BoundsBlock block, int j, double[] low, double[] high) {
    for (int c = 0; c < low.length; c++) {
      block.low[c][j] = low[c] - (c == 0 ? apart : 0);
      block.high[c][j] = high[c] + (c == 0 ? apart : 0);
    }
    for (int f = 0; f < block.providedLow.length; f++) {
      block.providedLow[f][j] = low[0] / 4;
      block.providedHigh[f][j] = high[0] / 4;
    }
    int last = low.length - 1;
    block.mustBlock[j] = blocks && low[last] > 30 && !Double.isNaN(high[last]) ? 2 : 0;
    block.mayBlock[j] = blocks ? 3 : 0;
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return new Explanation(List.of());
  }
}
