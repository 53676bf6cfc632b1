package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import plyworth.shared.scoring.Draw;

/** Listens which uncertain inputs the plugins ask for. */
final class AskedInputs {

  /** Random worlds looked at besides the typical one: what is asked for may depend on figures. */
  private static final int WORLDS = 32;

  private AskedInputs() {}

  /** The uncertain inputs that a figure is asked of, by id. */
  static List<UncertainInput> of(ToDoubleFunction<Draw> figure, long seed) {
    HeardInputs heard = new HeardInputs();
    figure.applyAsDouble(heard.through(Draw.TYPICAL));
    List<UncertainInput> typical = found(heard);
    LongStream.range(0, WORLDS)
        .forEach(w -> figure.applyAsDouble(heard.through(Draw.random(seed + w))));
    Map<String, UncertainInput> all = new TreeMap<>();
    found(heard).forEach(input -> all.put(input.id(), input));
    typical.forEach(input -> all.put(input.id(), input));
    return List.copyOf(all.values());
  }

  private static List<UncertainInput> found(HeardInputs heard) {
    List<UncertainInput> found = new ArrayList<>();
    heard
        .uncertain()
        .forEach(
            (id, ranges) ->
                found.add(new UncertainInput(id, ranges.iterator().next(), ranges.size() > 1)));
    return found;
  }
}
