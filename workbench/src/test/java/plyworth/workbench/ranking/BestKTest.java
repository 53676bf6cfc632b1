package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BestKTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theBestAreThoseThatSortingPutsFirstHoweverManyAreLevel(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int k = random.nextInt(40);
    BestK best = new BestK(k);
    List<Shortlist.Entry> all = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      Shortlist.Entry entry = new Shortlist.Entry(random.nextInt(60) / 64.0, i * 37 % 500);
      all.add(entry);
      boolean admitted = best.admits(entry.value(), entry.path());
      assertThat(admitted).isEqualTo(first(k, all).contains(entry));
      best.offer(entry.value(), entry.path());
      assertThat(best.sorted()).isEqualTo(first(k, all));
    }
    assertThat(best.least())
        .isEqualTo(k == 0 ? Double.POSITIVE_INFINITY : first(k, all).get(k - 1).value());
  }

  private static List<Shortlist.Entry> first(int k, List<Shortlist.Entry> all) {
    return all.stream().sorted(Shortlist.ORDER).limit(k).toList();
  }
}
