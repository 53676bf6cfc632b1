package plyworth.workbench.command.stock;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.Locale;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;

/** Prints the known products for people. */
final class ProductsText {

  private ProductsText() {}

  static void print(ProductLibrary library, double celsius, PrintWriter out) {
    out.printf("Products at %s °C, dry basis. A product is chosen in the brief:%n", plain(celsius));
    out.println("  \"moisture\": { \"isotherm\": { \"form\": \"product\", \"product\": ID }, … }");
    library.products().values().forEach(product -> print(product, celsius, out));
    out.println();
    out.println("Screening figures: measure the isotherm of your own product before a decision.");
  }

  private static void print(KnownProduct product, double celsius, PrintWriter out) {
    out.println();
    out.println("  " + product.id() + ": " + product.name());
    out.println("    " + isotherm(product, celsius) + critical(product, celsius));
    if (product.law().isPresent()) {
      out.println("    write  " + ProductsJson.choice(product).replace('\n', ' ').strip());
    }
    for (Property figure : product.figures().values()) {
      figure.points().forEach(point -> out.println(Paragraph.of("    ", line(figure, point))));
    }
    if (!product.note().isEmpty()) {
      out.println(Paragraph.of("    ", product.note() + "."));
    }
  }

  private static String isotherm(KnownProduct product, double celsius) {
    if (product.law().isEmpty()) {
      return "isotherm not known: measure it";
    }
    Isotherm isotherm = product.at(celsius);
    if (isotherm instanceof Isotherm.Linear linear) {
      return "straight line, slope " + Digits.sensible(linear.slope()) + " g/g";
    }
    if (isotherm instanceof Isotherm.Gab gab) {
      return String.format(
          Locale.ROOT,
          "GAB isotherm, monolayer %s g/g, C %s, k %s",
          Digits.sensible(gab.m0()),
          Digits.sensible(gab.c()),
          Digits.sensible(gab.k()));
    }
    Isotherm.Deliquescent crystals = (Isotherm.Deliquescent) isotherm;
    return "crystals that dissolve from a water activity of "
        + Digits.sensible(crystals.deliquescence());
  }

  private static String critical(KnownProduct product, double celsius) {
    double activity = product.criticalActivity(celsius);
    return Double.isNaN(activity) ? "" : "; critical water activity " + Digits.sensible(activity);
  }

  private static String line(Property figure, Sourced point) {
    String unit = UnitText.of(figure.unit());
    return String.format(
        Locale.ROOT,
        "%-20s  %s%s  [%s]",
        figure.id(),
        span(point.range()),
        unit.isEmpty() ? "" : " " + unit,
        origin(point));
  }

  /** Kind of origin and source; most sources of what was recalled say so themselves. */
  private static String origin(Sourced point) {
    boolean told = point.source().startsWith("from memory");
    return told
        ? point.source()
        : point.kind().name().toLowerCase(Locale.ROOT) + ": " + point.source();
  }

  private static String span(Range range) {
    return range.low() == range.high()
        ? plain(range.typical())
        : plain(range.typical()) + " (" + plain(range.low()) + " to " + plain(range.high()) + ")";
  }

  private static String plain(double figure) {
    return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
  }
}
