package plyworth.shared.store;

import java.util.List;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.brief.Sorption;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.Spelling;

/** How a product holds water, told apart by {@code form}; by its id when the library knows it. */
final class SorptionCodec {

  private static final List<String> FORMS = List.of("linear", "gab", "deliquescent", "product");

  private SorptionCodec() {}

  static Sorption read(Fields fields) {
    String form = fields.text("form");
    return switch (form) {
      case "linear" -> new Isotherm.Linear(fields.number("slope_g_per_g"));
      case "gab" ->
          new Isotherm.Gab(
              fields.number("monolayer_g_per_g"), fields.number("C"), fields.number("k"));
      case "deliquescent" ->
          new Isotherm.Deliquescent(
              fields.number("deliquescence_activity"), fields.number("allowed_uptake_g_per_g"));
      case "product" -> product(fields.value("product"));
      default ->
          throw new DataException(
              fields.value("form").place(),
              "\"" + form + "\" is not a form of isotherm",
              Spelling.suggestion(form, FORMS));
    };
  }

  private static KnownProduct product(Json json) {
    String id = Fields.text(json);
    List<String> usable =
        ProductLibrary.standard().products().values().stream()
            .filter(p -> p.law().isPresent())
            .map(KnownProduct::id)
            .toList();
    if (!usable.contains(id)) {
      boolean listed = ProductLibrary.standard().find(id).isPresent();
      throw new DataException(
          json.place(),
          listed
              ? "how the product \"" + id + "\" holds water is not known"
              : "the product \"" + id + "\" is not in the library",
          listed ? "Give an isotherm that was measured." : Spelling.suggestion(id, usable));
    }
    return ProductLibrary.standard().find(id).orElseThrow();
  }

  static Json write(Sorption sorption) {
    Entries entries = new Entries();
    if (sorption instanceof KnownProduct product) {
      entries.put("form", "product").put("product", product.id());
    } else if (sorption instanceof Isotherm.Linear linear) {
      entries.put("form", "linear").put("slope_g_per_g", linear.slope());
    } else if (sorption instanceof Isotherm.Gab gab) {
      entries.put("form", "gab").put("monolayer_g_per_g", gab.m0());
      entries.put("C", gab.c()).put("k", gab.k());
    } else if (sorption instanceof Isotherm.Deliquescent crystals) {
      entries.put("form", "deliquescent");
      entries.put("deliquescence_activity", crystals.deliquescence());
      entries.put("allowed_uptake_g_per_g", crystals.allowedUptake());
    } else {
      throw new IllegalArgumentException("a law over temperatures stands in the library alone");
    }
    return entries.json();
  }
}
