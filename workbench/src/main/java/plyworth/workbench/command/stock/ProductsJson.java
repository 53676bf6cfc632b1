package plyworth.workbench.command.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.material.Property;
import plyworth.shared.material.Sourced;
import plyworth.workbench.host.Digits;

/** The known products as JSON, version 1 of the interface. */
final class ProductsJson {

  private ProductsJson() {}

  static Json of(ProductLibrary library, double celsius) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth products"));
    root.put("version", Json.of(1));
    root.put("temperature_C", Json.of(celsius));
    List<Json> products = new ArrayList<>();
    library.products().values().forEach(product -> products.add(product(product, celsius)));
    root.put("products", Json.of(products));
    return Json.of(root);
  }

  /** What to write as the isotherm of a brief. */
  static String choice(KnownProduct product) {
    return JsonPrint.text(isotherm(product));
  }

  private static Json isotherm(KnownProduct product) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("form", Json.of("product"));
    entries.put("product", Json.of(product.id()));
    return Json.of(entries);
  }

  private static Json product(KnownProduct product, double celsius) {
    boolean known = product.law().isPresent();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("id", Json.of(product.id()));
    entries.put("name", Json.of(product.name()));
    entries.put("isotherm", known ? isotherm(product) : Json.of((String) null));
    entries.put("constants", known ? constants(product.at(celsius)) : Json.of((String) null));
    entries.put("criticalActivity", Json.of(Digits.exported(product.criticalActivity(celsius))));
    Map<String, Json> figures = new LinkedHashMap<>();
    product.figures().forEach((id, figure) -> figures.put(id, figure(figure)));
    entries.put("figures", Json.of(figures));
    entries.put("note", Json.of(product.note()));
    return Json.of(entries);
  }

  private static Json constants(Isotherm isotherm) {
    Map<String, Json> entries = new LinkedHashMap<>();
    if (isotherm instanceof Isotherm.Linear linear) {
      entries.put("slope_g_per_g", exported(linear.slope()));
    } else if (isotherm instanceof Isotherm.Gab gab) {
      entries.put("monolayer_g_per_g", exported(gab.m0()));
      entries.put("C", exported(gab.c()));
      entries.put("k", exported(gab.k()));
    } else if (isotherm instanceof Isotherm.Deliquescent crystals) {
      entries.put("deliquescence_activity", exported(crystals.deliquescence()));
      entries.put("allowed_uptake_g_per_g", exported(crystals.allowedUptake()));
    }
    return Json.of(entries);
  }

  private static Json figure(Property figure) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("unit", Json.of(figure.unit()));
    entries.put("figures", Json.of(figure.points().stream().map(ProductsJson::point).toList()));
    return Json.of(entries);
  }

  private static Json point(Sourced point) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("low", exported(point.range().low()));
    entries.put("typical", exported(point.range().typical()));
    entries.put("high", exported(point.range().high()));
    entries.put("kind", Json.of(point.kind().name().toLowerCase(Locale.ROOT)));
    entries.put("source", Json.of(point.source()));
    return Json.of(entries);
  }

  private static Json exported(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
