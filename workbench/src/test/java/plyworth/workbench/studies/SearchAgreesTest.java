package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.engine.table.Progress;

/** The bounded search finds on real studies what their tables show, figure by figure. */
class SearchAgreesTest {

  static Stream<Desk> desks() {
    return Stream.concat(
        Examples.ALL.stream().map(Examples::thinned),
        Examples.ALL.stream().filter(n -> !Examples.LARGE.contains(n)).map(Examples::whole));
  }

  @ParameterizedTest
  @MethodSource("desks")
  void theBestOfASearchAreThoseOfTheTable(Desk desk) {
    Ranked searched = Ranked.of(desk.compiled(), 10, Optional.of(Search.BOUNDED), Progress.NONE);
    for (Weighting weighting : desk.study().weightings()) {
      Ranked again = searched.again(desk.study().with(weighting), 10);
      assertThat(again.best()).isEqualTo(desk.ranked(weighting.name()).best()).isNotEmpty();
      assertThat(again.ranking().isCounted()).isFalse();
    }
  }

  @Test
  void aStudyThatNoTableHoldsIsSearchedUnasked() {
    Study broth = BrothStudy.study();
    List<Position> finer = broth.positions().stream().map(p -> finer(p, 60)).toList();
    Study huge = broth.withPositions(finer);
    Compiled compiled = Compiled.of(Prepared.of(huge, Examples.CATALOG), () -> false);
    Ranked ranked = Ranked.of(compiled, 3, Optional.empty(), Progress.NONE);
    assertThat(compiled.paths().count()).isGreaterThan(1_000_000_000L);
    assertThat(ranked.ranking().search()).isPresent();
    assertThat(ranked.best()).hasSize(3);
    assertThat(ranked.ranking().search().orElseThrow().scored()).isLessThan(1_000_000);
  }

  /** The same layers in many amounts close to each other. */
  private static Position finer(Position position, int most) {
    List<Option> options = new ArrayList<>();
    for (Option option : position.options()) {
      options.add(option);
      for (int i = 1; option.layers().size() == 1 && i <= most / position.options().size(); i++) {
        Layer layer = option.layers().get(0);
        options.add(new Option(List.of(thicker(layer, 1 + i * 1e-4))));
      }
    }
    return new Position(position.title(), options);
  }

  private static Layer thicker(Layer layer, double factor) {
    return new Layer(
        layer.material(),
        layer.amount() * factor,
        layer.unit(),
        layer.process(),
        layer.side(),
        layer.coverage());
  }
}
