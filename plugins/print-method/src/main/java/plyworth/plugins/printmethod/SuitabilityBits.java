package plyworth.plugins.printmethod;

/**
 * Verdicts on printed surfaces as a set of bits that is joined by union.
 *
 * <p>Bits 0 to 2 hold that some verdict is {@link Verdict#NONE}, {@link Verdict#UNKNOWN}, {@link
 * Verdict#CONDITIONAL}; bits 3 to 5 the same for provisional surfaces, which count only when bit 6,
 * print in reverse, is not set.
 */
final class SuitabilityBits {

  private static final int PROVISIONAL_SHIFT = 3;
  private static final long OWN = 0b111;
  private static final long REVERSE = 1L << 6;

  private SuitabilityBits() {}

  /** The bits of one printed surface. */
  static long of(Printed printed, Verdict verdict) {
    long bit = verdict == Verdict.NORMAL ? 0 : 1L << verdict.ordinal();
    if (printed.provisional()) {
      return bit << PROVISIONAL_SHIFT;
    }
    return printed.reverse() ? bit | REVERSE : bit;
  }

  /** Whether print in reverse is in the set. */
  static boolean reverse(long bits) {
    return (bits & REVERSE) != 0;
  }

  /** The gravest verdict of a whole structure. */
  static Verdict worst(long bits) {
    return gravest(counted(bits, !reverse(bits)));
  }

  /** The gravest verdict that any set between {@code must} and {@code may} can have. */
  static Verdict gravest(long must, long may) {
    return gravest(counted(may, !reverse(must)));
  }

  /** The mildest verdict that any set between {@code must} and {@code may} can have. */
  static Verdict mildest(long must, long may) {
    return gravest(counted(must, !reverse(may)));
  }

  /** Whether any set between {@code must} and {@code may} can be unknown. */
  static boolean mayBeUnknown(long must, long may) {
    boolean unknown = has(counted(may, !reverse(must)), Verdict.UNKNOWN);
    return unknown && mildest(must, may) != Verdict.NONE;
  }

  private static long counted(long bits, boolean provisional) {
    return (provisional ? bits | bits >> PROVISIONAL_SHIFT : bits) & OWN;
  }

  private static Verdict gravest(long own) {
    for (Verdict verdict : Verdict.values()) {
      if (has(own, verdict)) {
        return verdict;
      }
    }
    return Verdict.NORMAL;
  }

  private static boolean has(long own, Verdict verdict) {
    return (own >> verdict.ordinal() & 1) != 0;
  }
}
