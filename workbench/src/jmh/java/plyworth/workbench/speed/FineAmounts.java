package plyworth.workbench.speed;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;

/**
 * A study with its prints, varnishes, bonds and seals in fine steps: the same materials and
 * processes, and so many candidates that no table holds them, most of them near ties.
 */
final class FineAmounts {

  private FineAmounts() {}

  /**
   * The same study with more amounts of each layer that a machine puts down.
   *
   * @param steps further amounts of each, from a tenth below to a tenth above
   */
  static Study of(Study study, int steps) {
    return study.withPositions(study.positions().stream().map(p -> finer(p, steps)).toList());
  }

  private static Position finer(Position position, int steps) {
    Set<Option> options = new LinkedHashSet<>(position.options());
    for (Option option : position.options()) {
      if (option.layers().size() == 1 && !option.layers().get(0).process().isEmpty()) {
        options.addAll(finer(option.layers().get(0), steps));
      }
    }
    return new Position(position.title(), List.copyOf(options));
  }

  private static List<Option> finer(Layer layer, int steps) {
    List<Option> options = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      double share = 0.9 + 0.2 * i / Math.max(1, steps - 1);
      double amount = Math.round(layer.amount() * share * 1000) / 1000.0;
      options.add(
          Option.of(
              new Layer(
                  layer.material(),
                  amount,
                  layer.unit(),
                  layer.process(),
                  layer.side(),
                  layer.coverage())));
    }
    return options;
  }
}
