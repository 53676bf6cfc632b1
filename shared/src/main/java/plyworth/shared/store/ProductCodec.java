package plyworth.shared.store;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Product;
import plyworth.shared.brief.VolatileContent;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.Spelling;

/** The product and what harms it; what does not is null. */
final class ProductCodec {

  private ProductCodec() {}

  static Product read(Fields fields) {
    return new Product(
        fields.text("name"),
        fields.choice("form", Product.Form.class),
        fields.number("mass_g"),
        contents(fields),
        optional(fields, "moisture", ProductCodec::moisture),
        optional(fields, "oxygen", ProductCodec::oxygen),
        optional(fields, "volatile_content", ProductCodec::volatileContent));
  }

  static Json write(Product product) {
    return new Entries()
        .put("name", product.name())
        .put("form", product.form())
        .put("mass_g", product.massG())
        .put("contents", product.contents(), Json::of)
        .put("moisture", product.moisture(), ProductCodec::write)
        .put("oxygen", product.oxygen(), ProductCodec::write)
        .put("volatile_content", product.volatileContent(), ProductCodec::write)
        .json();
  }

  private static <T> Optional<T> optional(Fields fields, String key, Function<Fields, T> reader) {
    return fields.has(key) ? Optional.of(fields.object(key, reader)) : Optional.empty();
  }

  private static Set<String> contents(Fields fields) {
    return new TreeSet<>(fields.list("contents", ProductCodec::content));
  }

  private static String content(Json json) {
    String content = Fields.text(json);
    if (!Product.CONTENTS.contains(content)) {
      throw new DataException(
          json.place(),
          "\"" + content + "\" is not a content that rules speak of",
          Spelling.suggestion(content, Product.CONTENTS));
    }
    return content;
  }

  private static MoistureLimit moisture(Fields fields) {
    return new MoistureLimit(
        fields.object("isotherm", SorptionCodec::read),
        fields.number("dry_mass_g"),
        fields.number("initial_activity"),
        fields.number("critical_activity"),
        fields.choice("spoilt_by", MoistureLimit.Way.class));
  }

  private static Json write(MoistureLimit moisture) {
    return new Entries()
        .put("isotherm", SorptionCodec.write(moisture.sorption()))
        .put("dry_mass_g", moisture.dryMassG())
        .put("initial_activity", moisture.initialActivity())
        .put("critical_activity", moisture.criticalActivity())
        .put("spoilt_by", moisture.spoiltBy())
        .json();
  }

  private static OxygenLimit oxygen(Fields fields) {
    return new OxygenLimit(fields.number("uptake_ppm"), fields.number("headspace_percent"));
  }

  private static Json write(OxygenLimit oxygen) {
    return new Entries()
        .put("uptake_ppm", oxygen.uptakePpm())
        .put("headspace_percent", oxygen.headspacePercent())
        .json();
  }

  private static VolatileContent volatileContent(Fields fields) {
    return new VolatileContent(
        fields.text("substance"),
        fields.number("mass_fraction"),
        fields.number("charge_g"),
        fields.number("allowed_loss_percent"));
  }

  private static Json write(VolatileContent content) {
    return new Entries()
        .put("substance", content.substance())
        .put("mass_fraction", content.massFraction())
        .put("charge_g", content.chargeG())
        .put("allowed_loss_percent", content.allowedLossPercent())
        .json();
  }
}
