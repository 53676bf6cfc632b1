package plyworth.workbench.robustness;

import java.util.SplittableRandom;
import java.util.function.LongFunction;
import java.util.stream.LongStream;

/**
 * All draws that there may be, each with a seed and weights of its own, so that they do not depend
 * on how many threads make them nor on where they end.
 */
final class Draws {

  private final long[] seeds;
  private final double[][] weights;
  private final WeightSpan span;

  private Draws(long[] seeds, double[][] weights) {
    this.seeds = seeds;
    this.weights = weights;
    span = WeightSpan.of(weights);
  }

  /** The draws of a plan, at least one. */
  static Draws of(double[] weighting, Acceptability.Plan plan) {
    WeightSampler sampler = new WeightSampler(weighting, plan.doubt());
    SplittableRandom random = new SplittableRandom(plan.seed());
    long[] seeds = LongStream.generate(random::nextLong).limit(plan.most()).toArray();
    return new Draws(
        seeds,
        LongStream.of(seeds)
            .mapToObj(seed -> sampler.draw(new SplittableRandom(seed)))
            .toArray(double[][]::new));
  }

  /** Makes a draw. */
  Sample sample(int draw, LongFunction<World> worlds) {
    return Sample.of(weights[draw], span, worlds.apply(seeds[draw]));
  }
}
