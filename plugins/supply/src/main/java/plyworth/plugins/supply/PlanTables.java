package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.route.Pass;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** A plan as tables. */
final class PlanTables {

  private static final String NOBODY = "–";

  private PlanTables() {}

  /** Who runs each pass, how long it takes and what it costs outside. */
  static Table route(Plan plan, Floor floor) {
    List<List<Object>> rows = new ArrayList<>();
    for (Pass pass : plan.passes()) {
      Plan.Job job = plan.jobs().get(pass.process().id());
      rows.add(
          List.of(
              pass.process().name(),
              job.centre().map(WorkCentre::name).orElse(NOBODY),
              job.days(),
              job.cost(),
              floor.demand().perThousand(job.cost())));
    }
    return new Table(
        Text.of("route.title", floor.plant().name()),
        columns("pass", "centre", "days", "cost", "cost-per-1000"),
        rows,
        Text.of("route.basis", floor.demand().areaM2(), floor.demand().webMm()));
  }

  /** The slowest web, then pass after pass. */
  static Bars leadTime(Plan plan) {
    List<String> labels = new ArrayList<>();
    List<Double> days = new ArrayList<>();
    labels.add(slowest(plan));
    days.add(plan.webDays());
    for (Pass pass : plan.passes()) {
      labels.add(pass.process().name());
      days.add(plan.jobs().get(pass.process().id()).days());
    }
    return new Bars(Text.of("lead-time.title"), "days", labels, days, Text.of("lead-time.basis"));
  }

  /** The web that is there last, or the one of which it is not known. */
  private static String slowest(Plan plan) {
    return plan.webs().stream()
        .max((a, b) -> Double.compare(a.leadDays(), b.leadDays()))
        .map(w -> w.layer().toString())
        .orElse(NOBODY);
  }

  /** What is bought, what of it is left over and what that ties up. */
  static Table webs(Plan plan) {
    List<List<Object>> rows =
        plan.webs().stream()
            .<List<Object>>map(
                web ->
                    List.of(
                        web.layer().toString(),
                        web.leadDays(),
                        web.minimumKg(),
                        web.neededKg(),
                        web.surplusKg(),
                        web.price(),
                        web.surplusEur(),
                        web.offer().map(BoughtWeb::note).orElse(NOBODY)))
            .toList();
    return new Table(
        Text.of("webs.title"),
        columns(
            "web", "lead-days", "minimum", "needed", "surplus", "price", "surplus-value", "note"),
        rows,
        Text.of("webs.basis"));
  }

  /** Machines and services that run a process of the route and cannot take this job, if any. */
  static Optional<Table> refusals(Plan plan) {
    List<List<Object>> rows = new ArrayList<>();
    for (Plan.Job job : plan.jobs().values()) {
      Stream.of(job.runners().ruledOut(), job.snags())
          .map(Map::entrySet)
          .flatMap(entries -> entries.stream())
          .forEach(e -> rows.add(refusal(job, e.getKey(), e.getValue())));
    }
    Table table =
        new Table(
            Text.of("refusals.title"),
            columns("pass", "centre", "lacks"),
            rows,
            Text.of("refusals.basis"));
    return rows.isEmpty() ? Optional.empty() : Optional.of(table);
  }

  private static List<Object> refusal(Plan.Job job, WorkCentre centre, List<Snag> snags) {
    List<String> lacks =
        snags.stream()
            .map(s -> s.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .distinct()
            .toList();
    return List.of(job.runners().process().name(), centre.name(), String.join(", ", lacks));
  }

  private static List<Text> columns(String... keys) {
    return Stream.of(keys).map(key -> Text.of("column." + key)).toList();
  }
}
