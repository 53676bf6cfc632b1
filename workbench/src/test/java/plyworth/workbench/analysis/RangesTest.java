package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.host.BoundCriterion;

class RangesTest {

  private static final Prepared PREPARED = Prepared.of(BrothStudy.study(), BrothStudy.plugins());
  private static final Structure FOIL = PREPARED.study().baseline();

  private static double typical(Structure structure, BoundCriterion criterion) {
    Map<String, Assessment> scored = PREPARED.bound().score(structure);
    String plugin = PREPARED.bound().plugins().get(criterion.plugin()).id();
    return scored.get(plugin).figure(criterion.criterion().id());
  }

  @Test
  void theTypicalFigureLiesInside() {
    Map<String, Range> ranges = Ranges.of(PREPARED, FOIL, 40, 7);
    assertThat(ranges).hasSameSizeAs(PREPARED.bound().criteria());
    for (BoundCriterion criterion : PREPARED.bound().criteria()) {
      Range range = ranges.get(criterion.id());
      double typical = typical(FOIL, criterion);
      assertThat(range.known()).isEqualTo(!Double.isNaN(typical));
      if (range.known()) {
        assertThat(range.typical()).isEqualTo(typical).isBetween(range.low(), range.high());
      }
    }
  }

  @Test
  void uncertainInputsOpenARange() {
    Range range = Ranges.of(PREPARED, FOIL, 40, 7).get("barrier/otr");
    assertThat(range.high()).isGreaterThan(1.5 * range.low());
  }

  @Test
  void theSameSeedGivesTheSameRange() {
    assertThat(Ranges.of(PREPARED, FOIL, 25, 3)).isEqualTo(Ranges.of(PREPARED, FOIL, 25, 3));
    assertThat(Ranges.of(PREPARED, FOIL, 25, 3)).isNotEqualTo(Ranges.of(PREPARED, FOIL, 25, 4));
  }

  @Test
  void whatIsUnknownStaysUnknown() {
    Structure unknown = LayerNotation.readStructure("kraft-paper 50 g/m2");
    Map<String, Range> ranges = Ranges.of(PREPARED, unknown, 20, 1);
    assertThat(ranges.get("barrier/volatile-loss").known()).isFalse();
    for (BoundCriterion criterion : PREPARED.bound().criteria()) {
      if (Double.isNaN(typical(unknown, criterion))) {
        assertThat(ranges.get(criterion.id())).isEqualTo(Range.UNKNOWN);
      }
    }
  }
}
