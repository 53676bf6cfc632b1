package plyworth.shared.structure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Spelling;
import plyworth.shared.quantity.Unit;

/**
 * The written form of layers and structures: {@code material amount unit}, then {@code @process},
 * {@code !side} and {@code coverage %} where they matter; layers are joined by {@code /}, outside
 * first.
 *
 * <p>Examples: {@code ink-wb 1.5 g/m2 @flexo-water 40 %}, {@code kraft-paper 50 g/m2}, {@code
 * aluminium-foil 7 um !bright-out}.
 */
public final class LayerNotation {

  private LayerNotation() {}

  /** The written form of a layer. Reading it back gives an equal layer. */
  public static String write(Layer layer) {
    StringBuilder text = new StringBuilder(layer.material());
    text.append(' ').append(number(layer.amount())).append(' ').append(layer.unit().unit().plain());
    if (!layer.process().isEmpty()) {
      text.append(" @").append(layer.process());
    }
    if (layer.side() != Side.UNSTATED) {
      text.append(" !").append(Choice.plain(layer.side()));
    }
    if (!Double.isNaN(layer.coverage())) {
      text.append(' ').append(percent(layer.coverage())).append(" %");
    }
    return text.toString();
  }

  /**
   * Reads a structure.
   *
   * @throws IllegalArgumentException naming the layer and what is wrong with it
   */
  public static Structure readStructure(String text) {
    List<Layer> layers = new ArrayList<>();
    for (String part : text.strip().split("\\s+/\\s+", -1)) {
      layers.add(readLayer(part));
    }
    return new Structure(layers);
  }

  /**
   * Reads one layer.
   *
   * @throws IllegalArgumentException naming the layer and what is wrong with it
   */
  public static Layer readLayer(String text) {
    List<String> words = new ArrayList<>(Arrays.asList(text.strip().split("\\s+")));
    if (words.get(0).startsWith("/") || words.get(words.size() - 1).endsWith("/")) {
      throw wrong(text, "a layer is missing beside \"/\"");
    }
    if (words.size() < 3) {
      throw wrong(text, "write: material amount unit, for example \"ldpe 12 um\"");
    }
    Unit unit = unit(text, words.get(2));
    double amount = unit.toInside(amount(text, words.get(1)));
    AmountUnit kept = unit.kind() == Unit.Kind.GAUGE ? AmountUnit.UM : AmountUnit.GSM;
    String process = "";
    Side side = Side.UNSTATED;
    double coverage = Double.NaN;
    for (int i = 3; i < words.size(); i++) {
      String word = words.get(i);
      if (word.startsWith("@")) {
        process = word.substring(1);
      } else if (word.startsWith("!")) {
        side = side(text, word.substring(1));
      } else if (i + 1 < words.size() && words.get(i + 1).equals("%")) {
        coverage = share(text, word);
        i++;
      } else {
        throw wrong(text, "\"" + word + "\" is neither @process, !side nor a coverage in %");
      }
    }
    try {
      return new Layer(words.get(0), amount, kept, process, side, coverage);
    } catch (IllegalArgumentException e) {
      throw wrong(text, e.getMessage());
    }
  }

  private static Unit unit(String text, String word) {
    return Unit.named(word)
        .filter(u -> u.kind() == Unit.Kind.GAUGE || u.kind() == Unit.Kind.GRAMMAGE)
        .orElseThrow(
            () ->
                wrong(
                    text,
                    ("\"" + word + "\" is not a unit of a layer; ")
                        + "use um, nm, mil, gauge, g/m2 or lb/3000ft2"
                        + (word.contains("/") ? ", and put spaces around a \"/\"" : "")));
  }

  private static double amount(String text, String word) {
    try {
      return Double.parseDouble(word);
    } catch (NumberFormatException e) {
      throw wrong(text, "\"" + word + "\" is not a number");
    }
  }

  private static double share(String text, String word) {
    try {
      return new BigDecimal(word).movePointLeft(2).doubleValue();
    } catch (NumberFormatException e) {
      throw wrong(text, "\"" + word + "\" is not a number");
    }
  }

  private static Side side(String text, String word) {
    List<String> known = new ArrayList<>();
    for (Side side : Side.values()) {
      if (Choice.plain(side).equals(word) && side != Side.UNSTATED) {
        return side;
      }
      known.add(Choice.plain(side));
    }
    known.remove(Choice.plain(Side.UNSTATED));
    throw wrong(text, "\"" + word + "\" is not a side. " + Spelling.suggestion(word, known));
  }

  /** Shifted as a decimal, so that reading gives the same coverage to the last bit. */
  private static String percent(double coverage) {
    BigDecimal percent = BigDecimal.valueOf(coverage).movePointRight(2);
    return percent.stripTrailingZeros().toPlainString();
  }

  private static String number(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e15
        ? Long.toString((long) number)
        : Double.toString(number);
  }

  private static IllegalArgumentException wrong(String text, String problem) {
    return new IllegalArgumentException("in the layer \"" + text.strip() + "\": " + problem);
  }
}
