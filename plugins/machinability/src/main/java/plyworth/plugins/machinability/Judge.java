package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine.SealZone;

/** Comes from the state of a structure to its figures, the same way for one and for millions. */
final class Judge {

  static final long ATTACKED = 1;
  static final long UNSEALABLE = 1 << 1;
  static final long NO_WINDOW = 1 << 2;
  static final long TOO_THIN = 1 << 3;

  private final Settings settings;
  private final Sealing sealing;
  private final Attack attack;

  Judge(Settings settings, Attack attack) {
    this.settings = settings;
    this.sealing = new Sealing(settings);
    this.attack = attack;
  }

  Verdict verdict(LaminateState state) {
    HeatingCurve thick = settings.thickest(state.wall());
    double held = settings.machine().dwellS();
    double dwell = sealing.dwell(thick, state.initiation());
    double coolest = sealing.jawFor(sealing.target(state.initiation()), thick.remaining(held));
    double hottest = hottest(state, thick, held);
    double window = sealing.window(coolest, hottest);
    int attackClass = attack.verdict(state.attacks());
    return new Verdict(
        dwell,
        coolest,
        hottest,
        window,
        FillingCycle.of(settings, dwell).packsPerMinute(),
        attackClass,
        blocked(state, window, attackClass));
  }

  /**
   * Works the plain zone out only where it can matter: jaws are never cooler than what they heat,
   * so an outside that bears less than the sealant decides alone.
   */
  private double hottest(LaminateState state, HeatingCurve thick, double held) {
    if (state.faceLimit() <= state.upperLimit()) {
      return state.faceLimit();
    }
    boolean alone = settings.machine().zone() == SealZone.ONE_ON_ONE;
    HeatingCurve plain = alone ? thick : settings.plain(state.wall());
    return sealing.hottest(state.faceLimit(), state.upperLimit(), plain.remaining(held));
  }

  private long blocked(LaminateState state, double window, int attackClass) {
    long bits = attackClass == Attack.BLOCKED ? ATTACKED : 0;
    boolean sealant = !(state.initiation() >= Sealing.NO_SEALANT_C);
    bits |= sealing.never(state.initiation()) ? UNSEALABLE : 0;
    bits |= sealant && window < 0 ? NO_WINDOW : 0;
    bits |= sealant && state.sealantUm() < settings.leastSealantUm() ? TOO_THIN : 0;
    return bits;
  }
}
