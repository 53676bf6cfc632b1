package plyworth.plugins.supply;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Text;

/** Why a structure cannot be made; the order is that of the bits. */
enum Problem {
  /** No machine and no service runs one of its passes. */
  NO_WORK_CENTRE,
  /** One of its webs is not on offer. */
  NO_WEB,
  /** One of its webs is on offer from nobody who is approved. */
  WEB_NOT_APPROVED;

  static List<BlockingRule> rules() {
    return Stream.of(values())
        .map(
            p ->
                new BlockingRule(
                    p.id(), Text.of("rule." + p.id()), BlockingRule.Ground.NOT_MAKEABLE))
        .toList();
  }

  String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  long bit() {
    return 1L << ordinal();
  }
}
