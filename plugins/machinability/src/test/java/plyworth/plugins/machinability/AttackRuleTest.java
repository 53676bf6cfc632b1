package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Pack;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.SampleBriefs;

/** The table of rules is sound. */
class AttackRuleTest {

  @Test
  void everyRuleHasItsOwnIdAReasonAndASource() {
    List<AttackRule> rules = AttackRule.standard();
    assertThat(rules).hasSizeGreaterThan(20).allMatch(r -> !r.reason().isBlank());
    assertThat(rules).allMatch(r -> !r.source().isBlank());
    assertThat(rules.stream().map(AttackRule::id)).doesNotHaveDuplicates();
  }

  @Test
  void everyAgentHasARule() {
    Set<Agent> covered = EnumSet.noneOf(Agent.class);
    AttackRule.standard().forEach(r -> covered.add(r.agent()));
    assertThat(covered).containsExactlyInAnyOrder(Agent.values());
  }

  @Test
  void everyKindThatARuleNamesIsKnown() {
    Set<String> known = new HashSet<>(List.of("web", "bond", "print", "coating"));
    MaterialLibrary.standard()
        .all()
        .forEach(
            m -> {
              known.addAll(m.kinds());
              known.add(m.family());
              known.add(m.id());
            });
    ProcessLibrary.standard().processes().keySet().forEach(id -> known.add("@" + id));
    Set<String> named = new TreeSet<>();
    for (AttackRule rule : AttackRule.standard()) {
      named.addAll(words(rule.layer().text()));
      rule.outer().ifPresent(o -> named.addAll(words(o.text())));
    }
    named.removeAll(known);
    assertThat(named).isEmpty();
  }

  @Test
  void allRulesTogetherFitOneSet() {
    assertThat(Attack.by(EnumSet.allOf(Agent.class)).rules()).hasSizeLessThanOrEqualTo(53);
  }

  @Test
  void alcoholCountsAsStrongFromHalfTheLiquid() {
    assertThat(Agent.in(SampleBriefs.alcoholWipe().product()))
        .containsExactly(Agent.ALCOHOL_STRONG);
    assertThat(Agent.in(SampleBriefs.seasoningStick().product()))
        .containsExactly(Agent.FAT, Agent.FINES);
  }

  @Test
  void everyPackFormatHasItsBandAndItsSealantGauge() {
    for (Pack.Format format : Pack.Format.values()) {
      MachineBand band = MachineBand.of(format);
      assertThat(band.stiffnessLow()).isLessThan(band.stiffnessHigh());
      assertThat(band.source()).isNotBlank();
      SealantGauge clean = SealantGauge.of(format, Set.of());
      assertThat(SealantGauge.of(format, Set.of(Agent.FINES)).leastUm())
          .isGreaterThanOrEqualTo(clean.leastUm());
    }
  }

  private static List<String> words(String expression) {
    return Arrays.stream(expression.split("[|\\s]+"))
        .map(w -> w.startsWith("-") ? w.substring(1) : w)
        .filter(w -> !w.isBlank())
        .toList();
  }
}
