package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SuitabilityBitsTest {

  private static final long ALL = 0b1111111;

  /** Every set between every pair of sets: all subsets of seven bits. */
  @Test
  void verdictOfEverySetLiesBetweenGravestAndMildest() {
    for (long may = 0; may <= ALL; may++) {
      for (long must = may; ; must = (must - 1) & may) {
        encloses(must, may);
        if (must == 0) {
          break;
        }
      }
    }
  }

  private static void encloses(long must, long may) {
    Verdict gravest = SuitabilityBits.gravest(must, may);
    Verdict mildest = SuitabilityBits.mildest(must, may);
    boolean unknown = SuitabilityBits.mayBeUnknown(must, may);
    for (long set = 0; set <= ALL; set++) {
      if ((set & must) == must && (set & ~may) == 0) {
        Verdict verdict = SuitabilityBits.worst(set);
        assertThat(verdict).isBetween(gravest, mildest);
        assertThat(verdict != Verdict.UNKNOWN || unknown).isTrue();
      }
    }
  }

  @Test
  void provisionalSurfaceIsForgottenWhenThePrintIsReverse() {
    long provisionalNone = 1 << 3;
    long reverse = 1 << 6;
    assertThat(SuitabilityBits.worst(provisionalNone)).isEqualTo(Verdict.NONE);
    assertThat(SuitabilityBits.worst(provisionalNone | reverse)).isEqualTo(Verdict.NORMAL);
  }
}
