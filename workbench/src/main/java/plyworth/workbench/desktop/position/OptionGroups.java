package plyworth.workbench.desktop.position;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/**
 * Options as they are shown: each alone, or those of the same materials as one where there are
 * many.
 */
final class OptionGroups {

  /** Most options of a position that are shown alone. */
  static final int MOST = 10;

  /**
   * Options shown as one.
   *
   * @param label what they hold
   * @param options their indices at the position, ascending
   */
  record Group(String label, List<Integer> options) {

    /** Their indices. */
    Set<Integer> set() {
      return Set.copyOf(options);
    }
  }

  private OptionGroups() {}

  /** The groups of every position. */
  static List<List<Group>> of(List<Position> positions) {
    return positions.stream().map(OptionGroups::of).toList();
  }

  private static List<Group> of(Position position) {
    List<Option> options = position.options();
    return options.size() <= MOST ? each(options) : together(options);
  }

  private static List<Group> each(List<Option> options) {
    List<String> brief = options.stream().map(OptionWords::brief).toList();
    List<Group> groups = new ArrayList<>();
    for (int o = 0; o < options.size(); o++) {
      String own = brief.get(o);
      boolean alone = brief.stream().filter(own::equals).count() == 1;
      groups.add(new Group(alone ? own : OptionWords.full(options.get(o)), List.of(o)));
    }
    return groups;
  }

  /** Those of the same materials and processes together, whatever their amounts. */
  private static List<Group> together(List<Option> options) {
    Map<List<String>, List<Integer>> byMake = new LinkedHashMap<>();
    for (int o = 0; o < options.size(); o++) {
      byMake.computeIfAbsent(make(options.get(o)), make -> new ArrayList<>()).add(o);
    }
    return byMake.values().stream()
        .map(indices -> new Group(label(options, indices), List.copyOf(indices)))
        .toList();
  }

  private static List<String> make(Option option) {
    return option.layers().stream()
        .map(l -> l.material() + " @" + l.process() + " " + l.unit())
        .toList();
  }

  private static String label(List<Option> options, List<Integer> indices) {
    Option first = options.get(indices.get(0));
    if (indices.size() == 1) {
      return OptionWords.brief(first);
    }
    if (first.layers().size() > 1) {
      String materials =
          first.layers().stream().map(Layer::material).collect(Collectors.joining(" / "));
      return Words.of("flows.group", materials, indices.size());
    }
    Layer layer = first.layers().get(0);
    DoubleSummaryStatistics amounts =
        indices.stream()
            .mapToDouble(o -> options.get(o).layers().get(0).amount())
            .summaryStatistics();
    return Words.of(
        "flows.gauges",
        layer.material(),
        Digits.sensible(amounts.getMin()),
        Digits.sensible(amounts.getMax()),
        layer.unit().unit().symbol(),
        indices.size());
  }
}
