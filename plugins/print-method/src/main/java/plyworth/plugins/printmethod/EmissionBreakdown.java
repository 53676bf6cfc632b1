package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** What becomes of the solvent: air, oxidiser, web. */
record EmissionBreakdown(PrintJob job, Contributions contributions) {

  /** Normal volume of a gas volume at 25 °C. */
  private static final double NORMAL_PER_25C = 273.15 / 298.15;

  private static final int CURVE_POINTS = 31;
  private static final double LOWEST_CAPTURE = 0.7;

  List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    sections.add(abatement());
    List<LayDown> solvent =
        job.layDowns().stream()
            .filter(d -> d.by().kind() == InkKind.SOLVENT && d.solvent() > 0)
            .toList();
    List<LayDown> prints = solvent.stream().filter(d -> d.by().print()).toList();
    if (!prints.isEmpty()) {
      sections.add(crossover(prints));
      sections.add(residual(prints));
    }
    List<LayDown> treated = solvent.stream().filter(d -> d.by().abatement().overall() > 0).toList();
    if (!treated.isEmpty()) {
      sections.add(oxidiser(treated));
    }
    return sections;
  }

  private Table abatement() {
    double retained = contributions.plant().retained();
    List<List<Object>> rows = new ArrayList<>();
    for (LayDown down : job.layDowns()) {
      Abatement abatement = down.by().abatement();
      rows.add(
          List.of(
              down.layer().material(),
              down.by().process().id(),
              down.by().kind().plain(),
              down.solvent(),
              retained,
              abatement.capture(),
              abatement.destruction(),
              down.emitted(retained),
              down.emitted(retained) / down.dry()));
    }
    return Breakdown.table(
        "abatement",
        rows,
        "layer",
        "method",
        "ink-kind",
        "input",
        "retained",
        "capture",
        "destruction",
        "emitted",
        "per-solids");
  }

  private Curves crossover(List<LayDown> prints) {
    List<Series> series = new ArrayList<>();
    prints.forEach(down -> series.add(controlled(down)));
    WetProcess flexo = contributions.processes().get("flexo-water");
    if (flexo != null) {
      series.add(uncontrolled(prints, flexo));
    }
    return new Curves(
        Text.of("section.crossover"),
        Text.of("column.capture"),
        Text.of("column.emitted"),
        series,
        Text.of("section.crossover.basis"));
  }

  /** Along capture, with the destruction installed, or that of the parameter where none is. */
  private Series controlled(LayDown down) {
    double installed = down.by().abatement().destruction();
    double destruction =
        installed > 0
            ? installed
            : contributions.plant().context().parameter(Parameters.DESTRUCTION);
    double retained = contributions.plant().retained();
    List<Double> emitted =
        captures().stream()
            .map(k -> new Abatement(k, destruction).emitted(down.solvent(), retained))
            .toList();
    Text name = Text.of("series.controlled", down.by().process().id());
    return new Series(name, captures(), emitted);
  }

  private Series uncontrolled(List<LayDown> prints, WetProcess flexo) {
    double retained = contributions.plant().retained();
    double level =
        prints.stream()
            .mapToDouble(d -> contributions.layDown(d.layer(), flexo).emitted(retained))
            .sum();
    List<Double> emitted = captures().stream().map(k -> level).toList();
    return new Series(Text.of("series.uncontrolled"), captures(), emitted);
  }

  private static List<Double> captures() {
    return IntStream.range(0, CURVE_POINTS)
        .mapToObj(i -> LOWEST_CAPTURE + (1 - LOWEST_CAPTURE) * i / (CURVE_POINTS - 1))
        .toList();
  }

  private Table residual(List<LayDown> prints) {
    Brief brief = contributions.plant().context().brief();
    double limit = contributions.plant().context().parameter(Parameters.RESIDUAL_LIMIT);
    double area = brief.pack().filmAreaM2();
    double food = brief.product().massG() / 1000;
    double input = prints.stream().mapToDouble(LayDown::solvent).sum();
    List<Object> row =
        List.of(
            limit,
            input,
            100 * ResidualSolvent.retainedShare(limit, input),
            area * 100 / food,
            ResidualSolvent.inFood(limit, area, food));
    return Breakdown.table(
        "residual",
        List.of(row),
        "residual-limit",
        "input",
        "retained-percent",
        "area-per-food",
        "in-food");
  }

  private Table oxidiser(List<LayDown> treated) {
    Plant plant = contributions.plant();
    List<List<Object>> rows = new ArrayList<>();
    for (LayDown down : treated) {
      Blend blend = down.by().blend();
      Abatement abatement = down.by().abatement();
      double captured = down.solvent() * (1 - plant.retained()) * abatement.capture();
      double burnt = captured * abatement.destruction();
      double volume = plant.drying().airForSolvent(captured) * 1000 * NORMAL_PER_25C;
      double fuel = plant.oxidiser().fuel(volume, burnt, blend.lhv());
      rows.add(
          List.of(
              down.by().process().id(),
              blend.plain(),
              captured,
              captured * 1000 / volume,
              plant.oxidiser().selfSustaining(blend.lhv()),
              fuel,
              plant.oxidiser().surplus(volume, burnt, blend.lhv()),
              burnt * blend.carbonDioxide() + fuel * Oxidiser.GAS_CARBON));
    }
    return Breakdown.table(
        "oxidiser",
        rows,
        "method",
        "blend",
        "captured",
        "concentration",
        "self-sustaining",
        "fuel",
        "surplus",
        "carbon-dioxide");
  }
}
