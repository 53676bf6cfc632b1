package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The algebra that every join must keep to, on random states. */
class JoinTest {

  private static final int TIMES = 3000;

  private static double[] join(Join join, double[] outer, double[] inner) {
    double[] joined = new double[join.size()];
    join.join(outer, inner, joined, 0);
    return joined;
  }

  @ParameterizedTest
  @EnumSource
  void bracketingDoesNotMatter(Join join) {
    Random random = new Random(1);
    for (int i = 0; i < TIMES; i++) {
      double[] a = RandomStates.state(join, random);
      double[] b = RandomStates.state(join, random);
      double[] c = RandomStates.state(join, random);
      double[] left = join(join, join(join, a, b), c);
      double[] right = join(join, a, join(join, b, c));
      assertThat(Nearly.equal(left, right)).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource
  void neutralChangesNothing(Join join) {
    Random random = new Random(2);
    double[] neutral = new double[join.size()];
    join.neutral(neutral, 0);
    for (int i = 0; i < TIMES; i++) {
      double[] state = RandomStates.state(join, random);
      assertThat(Nearly.equal(join(join, neutral, state), state)).isTrue();
      assertThat(Nearly.equal(join(join, state, neutral), state)).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource
  void boundsEncloseTheJoinOfAnyTwoAlternatives(Join join) {
    Random random = new Random(3);
    for (int i = 0; i < TIMES; i++) {
      Alternatives outer = new Alternatives(join, random);
      Alternatives inner = new Alternatives(join, random);
      double[] low = new double[join.size()];
      double[] high = new double[join.size()];
      join.joinBounds(outer.low, outer.high, inner.low, inner.high, low, high, 0);
      for (double[] o : outer.states) {
        for (double[] n : inner.states) {
          assertThat(encloses(join, low, high, join(join, o, n))).isTrue();
        }
      }
    }
  }

  /** Completions are bounded step by step, so bounds of bounds must enclose as well. */
  @ParameterizedTest
  @EnumSource
  void boundsOfThreePartsEncloseInBothBracketings(Join join) {
    Random random = new Random(4);
    for (int i = 0; i < TIMES; i++) {
      Alternatives a = new Alternatives(join, random);
      Alternatives b = new Alternatives(join, random);
      Alternatives c = new Alternatives(join, random);
      Alternatives left = a.then(b).then(c);
      Alternatives right = a.then(b.then(c));
      for (double[] joined : left.states) {
        assertThat(encloses(join, left.low, left.high, joined)).isTrue();
        assertThat(encloses(join, right.low, right.high, joined)).isTrue();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void unknownIsPassedOn(Join join) {
    double[] unknown = new double[join.size()];
    java.util.Arrays.fill(unknown, Double.NaN);
    double[] known = RandomStates.state(join, new Random(7));
    assertThat(join(join, unknown, unknown)).containsOnly(Double.NaN);
    if (join != Join.INNERMOST) {
      assertThat(join(join, unknown, known)[0]).isNaN();
    }
    if (join != Join.OUTERMOST) {
      assertThat(join(join, known, unknown)[0]).isNaN();
    }
  }

  private static boolean encloses(Join join, double[] low, double[] high, double[] state) {
    if (join == Join.BITS) {
      long must = (long) low[0];
      long may = (long) high[0];
      return (must & ~(long) state[0]) == 0 && ((long) state[0] & ~may) == 0;
    }
    for (int k = 0; k < state.length; k++) {
      if (!Nearly.encloses(low[k], high[k], state[k])) {
        return false;
      }
    }
    return true;
  }

  /** A few states and the interval around them. */
  private static final class Alternatives {

    private final Join join;
    private final List<double[]> states = new ArrayList<>();
    private final double[] low;
    private final double[] high;

    Alternatives(Join join, Random random) {
      this.join = join;
      int count = 1 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        states.add(RandomStates.state(join, random));
      }
      low = states.get(0).clone();
      high = states.get(0).clone();
      states.forEach(s -> join.hull(low, high, s, s, 0));
    }

    private Alternatives(Join join, List<double[]> states, double[] low, double[] high) {
      this.join = join;
      this.states.addAll(states);
      this.low = low;
      this.high = high;
    }

    Alternatives then(Alternatives inner) {
      List<double[]> joined = new ArrayList<>();
      states.forEach(o -> inner.states.forEach(i -> joined.add(join(join, o, i))));
      double[] joinedLow = new double[join.size()];
      double[] joinedHigh = new double[join.size()];
      join.joinBounds(low, high, inner.low, inner.high, joinedLow, joinedHigh, 0);
      return new Alternatives(join, joined, joinedLow, joinedHigh);
    }
  }
}
