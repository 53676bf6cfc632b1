package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plyworth.shared.brief.Machine;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** The remarks on one structure. */
final class Findings {

  private static final String PRACTICE = "common practice";
  private static final String MODEL = "conduction through the webs between the jaws";

  private final MachinabilityScorer scorer;
  private final Structure structure;
  private final LaminateState state;
  private final Verdict verdict;
  private final Machine machine;
  private final List<Finding> findings = new ArrayList<>();

  Findings(MachinabilityScorer scorer, Structure structure, LaminateState state, Verdict verdict) {
    this.scorer = scorer;
    this.structure = structure;
    this.state = state;
    this.verdict = verdict;
    this.machine = scorer.settings().machine();
  }

  List<Finding> all() {
    attack();
    sealing();
    if (!(state.initiation() >= Sealing.NO_SEALANT_C)) {
      window();
      jaws();
      sealant();
    }
    stiffness();
    flammable();
    rate();
    return findings;
  }

  /** A rule that fired, with the layer it fired at. */
  record Fired(AttackRule rule, Layer layer) {}

  /** The attack rules that fire on a structure, layer by layer. */
  static List<Fired> fired(MachinabilityScorer scorer, Structure structure) {
    List<Fired> all = new ArrayList<>();
    Attack attack = scorer.attack();
    Set<String> outer = Set.of();
    int innermost = structure.layers().size() - 1;
    for (int i = 0; i <= innermost; i++) {
      Layer layer = structure.layers().get(i);
      Set<String> kinds = scorer.context().kinds(layer);
      long fired = attack.fired(AttackRule.Place.ANY, kinds, outer);
      if (i == innermost) {
        fired |= attack.fired(AttackRule.Place.INNERMOST, kinds, Set.of());
      }
      attack.in(fired).forEach(rule -> all.add(new Fired(rule, layer)));
      outer = kinds;
    }
    return all;
  }

  private void attack() {
    for (Fired fired : fired(scorer, structure)) {
      AttackRule rule = fired.rule();
      String id = rule.level() == Level.BLOCKS ? Criteria.ATTACK_ON_BOND : rule.id();
      Text text = Text.of("finding.attack", LayerNotation.write(fired.layer()), rule.reason());
      findings.add(new Finding(rule.level(), id, text, rule.source()));
    }
  }

  private void sealing() {
    if (!blocked(Judge.UNSEALABLE)) {
      return;
    }
    if (state.initiation() >= Sealing.NO_SEALANT_C) {
      add(Level.BLOCKS, Criteria.CANNOT_SEAL, PRACTICE, "finding.no-sealant", innermost());
    } else {
      double target = state.initiation() + scorer.settings().marginK();
      add(
          Level.BLOCKS,
          Criteria.CANNOT_SEAL,
          MODEL,
          "finding.jaw-below-target",
          machine.jawC(),
          target);
    }
  }

  private void window() {
    MachineBand band = scorer.band();
    double window = verdict.windowK();
    if (blocked(Judge.NO_WINDOW)) {
      add(
          Level.BLOCKS,
          Criteria.SEAL_WINDOW,
          MODEL,
          "finding.no-window",
          verdict.coolestC(),
          verdict.hottestC(),
          machine.jawSpreadK(),
          machine.dwellS());
    } else if (window < band.windowComfortable()) {
      String key = window < band.windowHard() ? "finding.hard-window" : "finding.narrow-window";
      add(Level.WARNS, "narrow-window", band.source(), key, window, band.windowComfortable());
    }
  }

  private void jaws() {
    double half = machine.jawSpreadK() / 2;
    if (machine.jawC() - half < verdict.coolestC()) {
      add(
          Level.WARNS,
          "jaw-too-cold",
          MODEL,
          "finding.jaw-too-cold",
          machine.jawC(),
          verdict.coolestC(),
          machine.dwellS());
    }
    if (machine.jawC() + half > verdict.hottestC()) {
      add(
          Level.WARNS,
          "jaw-too-hot",
          MODEL,
          "finding.jaw-too-hot",
          machine.jawC(),
          verdict.hottestC());
    }
  }

  private void sealant() {
    SealantGauge gauge = scorer.gauge();
    if (blocked(Judge.TOO_THIN)) {
      add(
          Level.BLOCKS,
          Criteria.SEALANT_TOO_THIN,
          PRACTICE,
          "finding.no-sealant-gauge",
          state.sealantUm(),
          scorer.settings().leastSealantUm());
    } else if (state.sealantUm() < gauge.leastUm()) {
      add(
          Level.WARNS,
          "sealant-thin",
          gauge.source(),
          "finding.sealant-thin",
          state.sealantUm(),
          gauge.leastUm());
    }
  }

  private void stiffness() {
    MachineBand band = scorer.band();
    double bending = state.bending();
    if (bending > band.stiffnessHard()) {
      add(
          Level.WARNS,
          "stiffness-beyond-machine",
          band.source(),
          "finding.stiffness-hard",
          bending,
          band.stiffnessHard(),
          band.machine());
    } else if (bending < band.stiffnessLow() || bending > band.stiffnessHigh()) {
      add(
          Level.WARNS,
          "stiffness-out-of-band",
          band.source(),
          "finding.stiffness-band",
          bending,
          band.stiffnessLow(),
          band.stiffnessHigh(),
          band.machine());
    }
    if (state.tensile() < band.tensileLeast()) {
      add(
          Level.WARNS,
          "tensile-low",
          band.source(),
          "finding.tensile-low",
          state.tensile(),
          band.tensileLeast());
    }
  }

  private void flammable() {
    Set<Agent> agents = scorer.agents();
    if (agents.contains(Agent.ALCOHOL_STRONG) || agents.contains(Agent.ALCOHOL_WEAK)) {
      add(Level.WARNS, "flammable-vapour", PRACTICE, "finding.flammable", machine.jawC());
    }
  }

  private void rate() {
    if (!Double.isNaN(verdict.packs())) {
      FillingCycle cycle = FillingCycle.of(scorer.settings(), verdict.dwellS());
      String key = "finding.rate-" + cycle.limit();
      add(Level.INFORMS, "rate-limit", PRACTICE, key, verdict.packs(), cycle.unlimited());
    }
  }

  private String innermost() {
    return LayerNotation.write(structure.innermost());
  }

  private boolean blocked(long bit) {
    return (verdict.blocked() & bit) != 0;
  }

  private void add(Level level, String rule, String source, String key, Object... arguments) {
    findings.add(new Finding(level, rule, Text.of(key, arguments), source));
  }
}
