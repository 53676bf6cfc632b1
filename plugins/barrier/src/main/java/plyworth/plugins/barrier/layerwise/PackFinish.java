package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.DOES_NOT_KEEP_BIT;
import static plyworth.plugins.barrier.pack.BarrierCriteria.MARGIN;
import static plyworth.plugins.barrier.pack.BarrierCriteria.SHELF_LIFE;
import static plyworth.plugins.barrier.pack.BarrierCriteria.VOLATILE_LOSS;
import static plyworth.plugins.barrier.pack.BarrierCriteria.VOLATILE_LOSS_BIT;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.course.Demand;
import plyworth.plugins.barrier.course.LossBounds;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Block;

/**
 * Turns the conductances of a block of packs into days, loss and verdicts. Most packs keep up to
 * the cap, or fail, with their layers at any humidity: a comparison of conductances says so, strip
 * by strip. Only of the others the humidity within is enclosed, and days are reckoned. The figures
 * of a pack that fails stay wide; it is blocked whatever they are.
 */
final class PackFinish {

  /** Packs that are judged together: few enough for their columns to stay near. */
  private static final int STRIP = 128;

  private final Way[] ways;
  private final Judgement judgement;
  private final double asked;
  private final double cap;
  private final double failsBefore;
  private final boolean constant;
  private final int alcohol;
  private final int water;
  private final Optional<LossBounds> loss;

  PackFinish(BarrierModel model, List<Permeant> permeants, Optional<LossBounds> loss) {
    Demand demand = model.demand();
    this.asked = demand.days();
    this.cap = demand.cap();
    this.failsBefore = model.blockMargin() * demand.days();
    this.constant = model.climates().seasons().constant();
    this.alcohol = demand.alcohol().map(a -> permeants.indexOf(a.permeant())).orElse(-1);
    this.water = permeants.indexOf(Permeant.WATER);
    this.loss = loss;
    this.ways = demand.canLimit().stream().map(m -> way(m, demand, permeants)).toArray(Way[]::new);
    this.judgement = Judgement.of(ways, alcohol >= 0, cap, failsBefore);
  }

  private Way way(Mechanism mechanism, Demand demand, List<Permeant> permeants) {
    int permeant = permeants.indexOf(mechanism.permeant());
    boolean mixed = mechanism.permeant().alcohol();
    double certain = Math.min(failsBefore, demand.days());
    return new Way(
        mechanism.balance(),
        permeant,
        mixed ? water : permeant,
        mixed ? demand.days() : 0,
        mechanism.balance().allowance(),
        Verdict.of(mechanism.balance(), cap, certain));
  }

  /** Writes the days of a block of packs, their margins, blocks and losses. */
  void finish(Block block, PackEnds ends) {
    int[] codes = new int[STRIP];
    double[] least = new double[STRIP];
    double[] most = new double[STRIP];
    OpenPacks open = new OpenPacks(ends, STRIP);
    for (int from = 0; from < block.size; from += STRIP) {
      int size = Math.min(STRIP, block.size - from);
      judge(ends, from, size, codes);
      open.read(write(block, from, size, codes, open.rows()));
      for (Way way : ways) {
        way.days(open, least, most);
        live(block, open, way, least, most);
      }
      if (alcohol >= 0) {
        Arrays.fill(block.low[VOLATILE_LOSS], from, from + size, 0);
        Arrays.fill(block.apart(VOLATILE_LOSS), from, from + size, 100);
        lose(block, open, least, most);
      }
      over(block.low[SHELF_LIFE], block.low[MARGIN], from, size);
      over(block.high[SHELF_LIFE], block.apart(MARGIN), from, size);
    }
  }

  private void over(double[] days, double[] margins, int from, int size) {
    for (int i = from; i < from + size; i++) {
      margins[i] = days[i] / asked;
    }
  }

  /**
   * What each way says of each pack. Conductances are compared without a division: area over
   * resistance and edges are above a figure when the area is above the rest of it times resistance.
   */
  private void judge(PackEnds ends, int from, int size, int[] codes) {
    Arrays.fill(codes, 0);
    double faceM2 = ends.faceM2();
    for (int w = 0; w < ways.length; w++) {
      PackEnds.Columns own = ends.columns()[ways[w].permeant()];
      double keepsUpTo = ways[w].verdict().keepsUpTo() - own.leak();
      double failsFrom = ways[w].verdict().failsFrom() - own.leak();
      double[] edges = own.edges();
      double[] low = own.low();
      double[] high = own.high();
      for (int i = 0; i < size; i++) {
        double edge = edges[from + i];
        double keeps = (keepsUpTo - edge) * low[from + i];
        double fails = (failsFrom - edge) * high[from + i];
        int open = faceM2 > keeps ? Judgement.OPEN : Judgement.UNKNOWN;
        int said = faceM2 > fails ? Judgement.FAILS : open;
        codes[i] |= (faceM2 <= keeps ? 0 : said) << 2 * w;
      }
      if (ends.follows(ways[w])) {
        for (int i = 0; i < size; i++) {
          codes[i] |= ends.unknown(ways[w], from + i) ? Judgement.UNKNOWN << 2 * w : 0;
        }
      }
    }
  }

  /** Writes what is said of each pack; returns how many rows are open, and which. */
  private int write(Block block, int from, int size, int[] codes, int[] open) {
    double[] low = block.low[SHELF_LIFE];
    double[] high = block.apart(SHELF_LIFE);
    double[] fewest = judgement.fewest();
    double[] most = judgement.most();
    long[] blocked = judgement.blocked();
    int[] close = judgement.open();
    int many = 0;
    for (int i = 0; i < size; i++) {
      int code = codes[i];
      low[from + i] = fewest[code];
      high[from + i] = most[code];
      block.blocked[from + i] = blocked[code];
      open[many] = from + i;
      many += close[code];
    }
    return many;
  }

  private void live(Block block, OpenPacks open, Way way, double[] fewest, double[] most) {
    for (int i = 0; i < open.many(); i++) {
      if (!(fewest[i] >= cap)) {
        live(block, open.rows()[i], way.tooMuchBefore(), fewest[i], most[i]);
      }
    }
  }

  private void live(Block block, int row, double tooMuchBefore, double soonest, double latest) {
    boolean fails = latest < failsBefore;
    boolean loses = latest < tooMuchBefore;
    boolean undecided = !fails && soonest < failsBefore || !loses && soonest < tooMuchBefore;
    block.low[SHELF_LIFE][row] = Math.min(block.low[SHELF_LIFE][row], soonest);
    block.high[SHELF_LIFE][row] = Math.min(block.high[SHELF_LIFE][row], latest);
    block.blocked[row] |= (fails ? DOES_NOT_KEEP_BIT : 0) | (loses ? VOLATILE_LOSS_BIT : 0);
    block.undecided[row] |= constant && undecided;
  }

  private void lose(Block block, OpenPacks open, double[] least, double[] most) {
    int many = open.many();
    loss.ifPresentOrElse(
        bounds ->
            bounds.enclose(
                open.least(alcohol), open.least(water), open.largest(water), many, least, most),
        () -> {
          Arrays.fill(least, Double.NaN);
          Arrays.fill(most, Double.NaN);
        });
    open.scatter(least, block.low[VOLATILE_LOSS]);
    open.scatter(most, block.high[VOLATILE_LOSS]);
  }
}
