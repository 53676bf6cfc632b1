package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import plyworth.shared.plant.AmountSpan;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.Span;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;

/** What is to be said of a plan: what cannot be made and why, what is sent out, what is left. */
final class SupplyFindings {

  private final Plan plan;
  private final Floor floor;
  private final List<Finding> found = new ArrayList<>();

  private SupplyFindings(Plan plan, Floor floor) {
    this.plan = plan;
    this.floor = floor;
  }

  static List<Finding> of(Plan plan, Floor floor) {
    SupplyFindings findings = new SupplyFindings(plan, floor);
    plan.jobs().values().forEach(findings::job);
    plan.webs().forEach(findings::web);
    findings.leadTime();
    return findings.found;
  }

  private void add(Level level, String rule, Text text) {
    Plant plant = floor.plant();
    found.add(new Finding(level, rule, text, "plant of the study: " + plant.name()));
  }

  private void job(Plan.Job job) {
    Optional<WorkCentre> centre = job.centre();
    String process = job.runners().process().name();
    if (centre.isEmpty()) {
      String rule = Problem.NO_WORK_CENTRE.id();
      Text text =
          job.nearest(true)
              .map(e -> snag(rule, process, e.getKey(), e.getValue().get(0)))
              .orElse(Text.of("finding." + rule + ".nobody", process));
      add(Level.BLOCKS, rule, text);
    } else if (centre.get().outside()) {
      Text text =
          Text.of(
              "finding.sent-out",
              process,
              centre.get().name(),
              job.passes(),
              job.passes() * job.cost(),
              job.passes() * job.days());
      add(Level.INFORMS, "sent-out", text);
      job.nearest(false)
          .map(e -> snag("own-machine", process, e.getKey(), e.getValue().get(0)))
          .ifPresent(own -> add(Level.INFORMS, "own-machine", own));
    }
  }

  /** A sentence on what a machine lacks: process, machine, then what the kind of snag tells. */
  private static Text snag(String rule, String process, WorkCentre centre, Snag snag) {
    List<Object> arguments = new ArrayList<>(List.of(process, centre.name()));
    arguments.addAll(snag.arguments());
    return new Text("finding." + rule + "." + plain(snag.kind()), arguments);
  }

  private static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private void web(Sourcing web) {
    web.problem().ifPresent(p -> add(Level.BLOCKS, p.id(), problem(web, p)));
    if (web.problem().isEmpty() && web.surplusKg() > 0) {
      String key = Double.isNaN(web.price()) ? ".unpriced" : "";
      List<Object> arguments =
          List.of(
              web.layer().toString(),
              web.minimumKg(),
              web.neededKg(),
              web.surplusKg(),
              web.surplusEur());
      add(Level.WARNS, "minimum-order", new Text("finding.minimum-order" + key, arguments));
    }
  }

  private Text problem(Sourcing web, Problem problem) {
    Layer layer = web.layer();
    String key = "finding." + problem.id();
    List<BoughtWeb> offers = Sourcing.offers(layer, floor);
    return switch (web.reach()) {
      case NO_MATERIAL -> Text.of(key + ".material", layer.toString(), floor.plant().name());
      case NO_GAUGE -> Text.of(key + ".gauge", layer.toString(), gauges(offers));
      case NO_WIDTH ->
          Text.of(key + ".width", layer.toString(), floor.demand().webMm(), widths(offers));
      default -> Text.of(key, layer.toString());
    };
  }

  private static String gauges(List<BoughtWeb> offers) {
    return AmountSpan.list(offers.stream().flatMap(w -> w.gauges().stream()).distinct().toList());
  }

  private static String widths(List<BoughtWeb> offers) {
    return offers.stream()
        .flatMap(w -> w.widthsMm().stream())
        .distinct()
        .map(SupplyFindings::width)
        .collect(Collectors.joining(", "));
  }

  private static String width(Span span) {
    String from = plain(span.from());
    return span.from() == span.to() ? from : from + "–" + plain(span.to());
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  private void leadTime() {
    if (!Double.isNaN(plan.leadDays())) {
      Text text =
          Text.of(
              "finding.lead-time",
              plan.leadDays(),
              plan.webDays(),
              plan.passDays(),
              plan.daysOutside());
      add(Level.INFORMS, "lead-time", text);
    }
  }
}
