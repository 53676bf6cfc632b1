package plyworth.plugins.barrier.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.shared.brief.Brief;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.RandomStructures;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

class MonotonyTest {

  private static final int STRUCTURES = 60;

  @Test
  void moreGaugeNeverTransmitsMore() {
    for (Brief brief : SampleBriefs.all()) {
      ScoringContext context = Bench.context(brief);
      for (long seed = 0; seed < STRUCTURES; seed++) {
        Structure thin = RandomStructures.structure(seed);
        PackBarrier before = Bench.barrier(context, thin);
        for (int i = 0; i < thin.layers().size(); i++) {
          PackBarrier after = Bench.barrier(context, with(thin, i, thicker(thin.layers().get(i))));
          assertThat(after.otr()).as(thin + ", " + i).isLessThanOrEqualTo(before.otr());
          assertThat(after.wvtr()).as(thin + ", " + i).isLessThanOrEqualTo(before.wvtr());
          if (!followsHumidity(context, thin)) {
            facesDoNotPassMore(before, after);
          }
        }
      }
    }
  }

  /** A thicker skin can make what lies behind or before it damper, and looser to oxygen. */
  private static boolean followsHumidity(ScoringContext context, Structure structure) {
    return structure.layers().stream()
        .anyMatch(l -> context.material(l).property("o2-humidity-factor").isPresent());
  }

  private static void facesDoNotPassMore(PackBarrier before, PackBarrier after) {
    for (int p = 0; p < before.paths().size(); p++) {
      assertThat(after.paths().get(p).terms().face())
          .isLessThanOrEqualTo(before.paths().get(p).terms().face());
    }
  }

  @Test
  void splittingABulkLayerChangesNothing() {
    ScoringContext context = Bench.context(SampleBriefs.alcoholWipe());
    int split = 0;
    for (long seed = 0; seed < STRUCTURES; seed++) {
      Structure whole = RandomStructures.structure(seed);
      for (int i = 0; i < whole.layers().size() - 1; i++) {
        Layer layer = whole.layers().get(i);
        if (bulk(context.material(layer))) {
          same(Bench.barrier(context, whole), Bench.barrier(context, halved(whole, i)));
          split++;
        }
      }
    }
    assertThat(split).isGreaterThan(50);
  }

  private static void same(PackBarrier whole, PackBarrier halves) {
    assertThat(halves.otr()).isCloseTo(whole.otr(), withPercentage(1e-8));
    assertThat(halves.wvtr()).isCloseTo(whole.wvtr(), withPercentage(1e-8));
    assertThat(halves.volatileLoss()).isCloseTo(whole.volatileLoss(), withPercentage(1e-8));
  }

  private static boolean bulk(Material material) {
    return material.property("o2-permeability").isPresent()
        && !material.kinds().contains("barrier");
  }

  private static Structure halved(Structure structure, int at) {
    List<Layer> layers = new ArrayList<>(structure.layers());
    Layer layer = layers.get(at);
    Layer half = of(layer, layer.amount() / 2);
    layers.set(at, half);
    layers.add(at, half);
    return new Structure(layers);
  }

  private static Structure with(Structure structure, int at, Layer layer) {
    List<Layer> layers = new ArrayList<>(structure.layers());
    layers.set(at, layer);
    return new Structure(layers);
  }

  private static Layer thicker(Layer layer) {
    return of(layer, layer.amount() * 1.3);
  }

  private static Layer of(Layer layer, double amount) {
    return new Layer(
        layer.material(), amount, layer.unit(), layer.process(), layer.side(), layer.coverage());
  }
}
