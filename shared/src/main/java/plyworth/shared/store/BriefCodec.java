package plyworth.shared.store;

import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Handling;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.Pack;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;

/** The brief. Units stand in the keys. */
final class BriefCodec {

  private BriefCodec() {}

  static Brief read(Fields fields) {
    return new Brief(
        fields.object("product", ProductCodec::read),
        fields.object("climate", ClimateCodec::read),
        fields.number("shelf_life_days"),
        fields.object("pack", BriefCodec::pack),
        fields.object("machine", MachineCodec::read),
        fields.object("market", BriefCodec::market),
        fields.object("order", BriefCodec::order),
        fields.choice("handling", Handling.class));
  }

  static Json write(Brief brief) {
    return new Entries()
        .put("product", ProductCodec.write(brief.product()))
        .put("climate", ClimateCodec.write(brief.climate()))
        .put("shelf_life_days", brief.shelfLifeDays())
        .put("pack", write(brief.pack()))
        .put("machine", MachineCodec.write(brief.machine()))
        .put("market", write(brief.market()))
        .put("order", write(brief.order()))
        .put("handling", brief.handling())
        .json();
  }

  private static Pack pack(Fields fields) {
    return new Pack(
        fields.choice("format", Pack.Format.class),
        fields.number("width_mm"),
        fields.number("length_mm"),
        fields.number("seal_width_mm"),
        fields.number("overlap_mm"),
        fields.number("headspace_cm3"));
  }

  private static Json write(Pack pack) {
    return new Entries()
        .put("format", pack.format())
        .put("width_mm", pack.widthMm())
        .put("length_mm", pack.lengthMm())
        .put("seal_width_mm", pack.sealWidthMm())
        .put("overlap_mm", pack.overlapMm())
        .put("headspace_cm3", pack.headspaceCm3())
        .json();
  }

  private static Market market(Fields fields) {
    return new Market(fields.text("region"), fields.whole("launch_year"), fields.whole("end_year"));
  }

  private static Json write(Market market) {
    return new Entries()
        .put("region", market.region())
        .put("launch_year", market.launchYear())
        .put("end_year", market.endYear())
        .json();
  }

  private static Order order(Fields fields) {
    return new Order(
        fields.number("packs"),
        fields.number("orders"),
        fields.number("new_colours"),
        fields.number("mother_web_mm"),
        fields.number("edge_trim_mm"));
  }

  private static Json write(Order order) {
    return new Entries()
        .put("packs", order.packs())
        .put("orders", order.orders())
        .put("new_colours", order.newColours())
        .put("mother_web_mm", order.motherWebMm())
        .put("edge_trim_mm", order.edgeTrimMm())
        .json();
  }
}
