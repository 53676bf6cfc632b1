package plyworth.shared.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.plant.AmountSpan;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.plant.Charge;
import plyworth.shared.plant.MinimumOrder;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.Span;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;

/**
 * The plant of a study.
 *
 * @param materials materials that webs may be of
 * @param processes processes that may run
 */
record PlantCodec(MaterialLibrary materials, ProcessLibrary processes) {

  Plant read(Fields fields) {
    List<WorkCentre> centres = new ArrayList<>();
    centres.addAll(fields.objects("machines", f -> centre(f, Optional.empty())));
    centres.addAll(fields.objects("services", f -> centre(f, Optional.of(charge(f)))));
    return new Plant(
        fields.text("name"), centres, fields.objects("webs", this::web), fields.text("note", ""));
  }

  private WorkCentre centre(Fields fields, Optional<Charge> charge) {
    return new WorkCentre(
        fields.text("id"),
        fields.text("name"),
        Set.copyOf(fields.list("processes", this::process)),
        fields.object("web_width_mm", PlantCodec::span),
        amounts(fields, "webs"),
        amounts(fields, "layers"),
        fields.has("print_stations") ? fields.whole("print_stations") : 0,
        fields.flag("solvents"),
        fields.number("days"),
        charge,
        fields.text("note", ""));
  }

  private static Charge charge(Fields fields) {
    return new Charge(fields.number("setup_EUR"), fields.number("per_1000_m2_EUR"));
  }

  /** A process that a machine runs; a web that is bought is run by none. */
  private String process(Json json) {
    String id = Fields.text(json);
    ProcessRole role = processes.require(id).role();
    if (role == ProcessRole.WEB || role == ProcessRole.WEB_PART) {
      throw new DataException(
          json.place(),
          "\"" + id + "\" is no pass: what it makes is a part of a bought web",
          "Name the web under \"webs\".");
    }
    return id;
  }

  private BoughtWeb web(Fields fields) {
    return new BoughtWeb(
        fields.value("material", json -> materials.require(Fields.text(json)).id()),
        fields.has("process") ? fields.value("process", this::part) : "",
        fields.objects("widths_mm", PlantCodec::span),
        amounts(fields, "gauges"),
        minimum(fields),
        fields.numberOrUnknown("lead_days"),
        fields.flag("approved"),
        fields.text("note", ""));
  }

  private String part(Json json) {
    String id = Fields.text(json);
    if (processes.require(id).role() != ProcessRole.WEB_PART) {
      throw new DataException(
          json.place(),
          "\"" + id + "\" does not make a part of a web",
          "Leave it out for a web, or name a process such as \"coextruded\".");
    }
    return id;
  }

  private static MinimumOrder minimum(Fields fields) {
    boolean kg = fields.has("minimum_order_kg");
    boolean area = fields.has("minimum_order_m2");
    if (kg && area) {
      throw new DataException(
          fields.value("minimum_order_m2").place(),
          "the minimum order is given twice",
          "Give it in kg or in m², not in both.");
    }
    if (kg) {
      return new MinimumOrder(fields.number("minimum_order_kg"), MinimumOrder.By.KG);
    }
    return area
        ? new MinimumOrder(fields.number("minimum_order_m2"), MinimumOrder.By.M2)
        : MinimumOrder.UNKNOWN;
  }

  private static Span span(Fields fields) {
    return new Span(fields.number("from"), fields.number("to"));
  }

  private static List<AmountSpan> amounts(Fields fields, String key) {
    return fields.list(key, json -> AmountSpan.read(Fields.text(json)));
  }

  static Json write(Plant plant) {
    return new Entries()
        .put("name", plant.name())
        .put(
            "machines",
            plant.centres().stream().filter(c -> !c.outside()).toList(),
            PlantCodec::write)
        .put(
            "services",
            plant.centres().stream().filter(WorkCentre::outside).toList(),
            PlantCodec::write)
        .put("webs", plant.webs(), PlantCodec::write)
        .put("note", plant.note())
        .json();
  }

  private static Json write(WorkCentre centre) {
    Entries entries =
        new Entries()
            .put("id", centre.id())
            .put("name", centre.name())
            .put("processes", centre.processes(), Json::of)
            .put("web_width_mm", write(centre.widthMm()))
            .put("webs", centre.webs(), a -> Json.of(a.toString()))
            .put("layers", centre.layers(), a -> Json.of(a.toString()))
            .put("print_stations", centre.printStations())
            .put("solvents", Json.of(centre.solvents()))
            .put("days", centre.days());
    centre
        .charge()
        .ifPresent(
            c -> entries.put("setup_EUR", c.setupEur()).put("per_1000_m2_EUR", c.per1000M2Eur()));
    return entries.put("note", centre.note()).json();
  }

  private static Json write(BoughtWeb web) {
    Entries entries = new Entries().put("material", web.material());
    if (!web.process().isEmpty()) {
      entries.put("process", web.process());
    }
    entries
        .put("widths_mm", web.widthsMm(), PlantCodec::write)
        .put("gauges", web.gauges(), a -> Json.of(a.toString()));
    if (!Double.isNaN(web.minimumOrder().amount())) {
      boolean kg = web.minimumOrder().by() == MinimumOrder.By.KG;
      entries.put(kg ? "minimum_order_kg" : "minimum_order_m2", web.minimumOrder().amount());
    }
    if (!Double.isNaN(web.leadDays())) {
      entries.put("lead_days", web.leadDays());
    }
    return entries.put("approved", Json.of(web.approved())).put("note", web.note()).json();
  }

  private static Json write(Span span) {
    return new Entries().put("from", span.from()).put("to", span.to()).json();
  }
}
