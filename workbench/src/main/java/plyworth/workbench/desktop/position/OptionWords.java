package plyworth.workbench.desktop.position;

import java.util.List;
import java.util.Locale;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Side;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;

/** How options are written on screen. */
final class OptionWords {

  private OptionWords() {}

  /** Everything about an option. */
  static String full(Option option) {
    return option.equals(Option.NOTHING)
        ? Words.of("option.nothing")
        : UnitText.of(option.toString());
  }

  /** Material and amount; of several layers the first, and how many there are. */
  static String brief(Option option) {
    if (option.equals(Option.NOTHING)) {
      return Words.of("option.nothing");
    }
    List<Layer> layers = option.layers();
    String first = UnitText.of(bare(layers.get(0)));
    return layers.size() == 1 ? first : Words.of("option.layers", first, layers.size());
  }

  private static String bare(Layer layer) {
    Layer bought =
        new Layer(layer.material(), layer.amount(), layer.unit(), "", Side.UNSTATED, Double.NaN);
    return bought.toString();
  }

  /** A number of candidates. */
  static String count(long candidates) {
    return String.format(Locale.ROOT, "%,d", candidates);
  }
}
