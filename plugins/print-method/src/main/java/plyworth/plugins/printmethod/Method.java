package plyworth.plugins.printmethod;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Resources;

/**
 * What this plugin knows of a print method beyond the figures of its process.
 *
 * @param id process id; {@code *} for any other
 * @param drying how the print dries
 * @param ethanolShare mass share of ethanol in the solvent; the rest is ethyl acetate
 * @param cells largest usual cells for a solid; NaN figures when the method has none
 * @param source where the figures come from
 */
record Method(String id, Means drying, double ethanolShare, CellVolume cells, String source) {

  /** How print dries. */
  enum Means {
    /** Hot air carries off what evaporates. */
    HOT_AIR,
    /** Ultraviolet lamps over every deck. */
    LAMPS,
    /** Heat on the blanket, taken from the heat figure of the process. */
    FUSED
  }

  private static final Map<String, Method> TABLE = read();

  /** The method of that process. */
  static Method of(String processId) {
    return TABLE.getOrDefault(processId, TABLE.get("*"));
  }

  /** What its solvent is: 2-propanol in water-based ink, else ethanol and ethyl acetate. */
  Blend blend(InkKind kind) {
    return kind == InkKind.WATER ? Blend.pure("isopropanol") : Blend.ofEthanol(ethanolShare);
  }

  private static Map<String, Method> read() {
    List<String> header =
        List.of(
            "method", "drying", "ethanol-share", "cell-volume", "transfer", "density", "source");
    Map<String, Method> methods = new LinkedHashMap<>();
    String text = Resources.text(Method.class, "methods.csv");
    for (Csv.Row row : Csv.read(text, "methods.csv", header)) {
      CellVolume cells =
          new CellVolume(
              row.numberOrUnknown("cell-volume"),
              row.numberOrUnknown("transfer"),
              row.numberOrUnknown("density"));
      String id = row.text("method");
      methods.put(
          id, new Method(id, means(row), row.number("ethanol-share"), cells, row.text("source")));
    }
    return Map.copyOf(methods);
  }

  private static Means means(Csv.Row row) {
    for (Means means : Means.values()) {
      if (Choice.plain(means).equals(row.text("drying"))) {
        return means;
      }
    }
    throw new DataException(row.place(), "\"" + row.text("drying") + "\" is no drying", "");
  }
}
