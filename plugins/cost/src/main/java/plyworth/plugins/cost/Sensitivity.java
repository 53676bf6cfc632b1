package plyworth.plugins.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;

/** How far each uncertain input moves the price of the film, the others as they are. */
final class Sensitivity {

  private Sensitivity() {}

  /**
   * One input.
   *
   * @param input name, for example {@code ldpe/price}
   * @param range what it may be
   * @param atLow EUR per 1000 packs at its low end
   * @param atHigh EUR per 1000 packs at its high end
   */
  record Swing(String input, Range range, double atLow, double atHigh) {
    double width() {
      return Math.abs(atHigh - atLow);
    }
  }

  /** The inputs that move the price, the strongest first. */
  static List<Swing> of(Structure structure, Tariff tariff) {
    List<Swing> swings = new ArrayList<>();
    inputs(structure, tariff)
        .forEach(
            (input, range) ->
                swings.add(
                    new Swing(
                        input,
                        range,
                        price(structure, tariff, input, range.low()),
                        price(structure, tariff, input, range.high()))));
    swings.removeIf(s -> !(s.width() > 0));
    swings.sort(Comparator.comparingDouble(Swing::width).reversed());
    return swings;
  }

  /** Every input that the bill of a structure draws. */
  private static Map<String, Range> inputs(Structure structure, Tariff tariff) {
    Map<String, Range> inputs = new TreeMap<>();
    Draw draw = tariff.context().draw();
    Draw recording =
        (input, range) -> {
          inputs.put(input, range);
          return draw.figure(input, range);
        };
    bill(structure, tariff, recording);
    return inputs;
  }

  private static double price(Structure structure, Tariff tariff, String moved, double figure) {
    Draw draw = tariff.context().draw();
    return bill(
            structure,
            tariff,
            (input, range) -> input.equals(moved) ? figure : draw.figure(input, range))
        .pricePerThousand();
  }

  private static Bill bill(Structure structure, Tariff tariff, Draw draw) {
    Tariff drawn = new Tariff(tariff.context().with(draw));
    return Bill.of(structure, drawn, tariff.brief().order().packs());
  }
}
