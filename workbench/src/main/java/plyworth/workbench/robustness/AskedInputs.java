package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Draw;

/** Listens which uncertain inputs the plugins ask for. */
final class AskedInputs {

  /** Random worlds looked at besides the typical one: what is asked for may depend on figures. */
  private static final int WORLDS = 32;

  private final Map<String, Set<Range>> asked = new TreeMap<>();

  private AskedInputs() {}

  /** The uncertain inputs that a figure is asked of, by id. */
  static List<UncertainInput> of(ToDoubleFunction<Draw> figure, long seed) {
    AskedInputs inputs = new AskedInputs();
    figure.applyAsDouble(inputs.listening(Draw.TYPICAL));
    List<UncertainInput> typical = inputs.found();
    LongStream.range(0, WORLDS)
        .forEach(w -> figure.applyAsDouble(inputs.listening(Draw.random(seed + w))));
    Map<String, UncertainInput> all = new TreeMap<>();
    inputs.found().forEach(input -> all.put(input.id(), input));
    typical.forEach(input -> all.put(input.id(), input));
    return List.copyOf(all.values());
  }

  private Draw listening(Draw draw) {
    return (input, range) -> {
      if (range.low() < range.high()) {
        asked.computeIfAbsent(input, id -> new LinkedHashSet<>()).add(range);
      }
      return draw.figure(input, range);
    };
  }

  private List<UncertainInput> found() {
    List<UncertainInput> found = new ArrayList<>();
    asked.forEach(
        (id, ranges) ->
            found.add(new UncertainInput(id, ranges.iterator().next(), ranges.size() > 1)));
    return found;
  }
}
