package plyworth.plugins.machinability;

import java.util.List;
import java.util.Set;
import plyworth.shared.brief.Pack;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Fields;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Resources;
import plyworth.shared.structure.KindExpression;

/**
 * How thick the sealant must be: the sealable layers that lie together at the inside count as one.
 *
 * @param leastUm gauge that the pack format and the product ask for, µm
 * @param source where that figure is from
 * @param coats webs and coatings whose gauge says nothing of their seal
 */
record SealantGauge(double leastUm, String source, List<OwnCoat> coats) {

  private static final String GAUGES = "sealant-gauges.csv";
  private static final String COATS = "own-seal-coats.json";
  private static final List<String> HEADER =
      List.of("format", "least", "least-with-fines", "source");
  private static final List<Csv.Row> TABLE =
      Csv.read(Resources.text(SealantGauge.class, GAUGES), GAUGES, HEADER);
  private static final List<OwnCoat> OWN_COATS = readCoats();

  /**
   * A layer whose gauge is not that of its seal coat.
   *
   * @param layer which layers
   * @param countsAsUm gauge it counts as, µm
   * @param reason why
   * @param source where from
   */
  record OwnCoat(KindExpression layer, double countsAsUm, String reason, String source) {}

  static SealantGauge of(Pack.Format format, Set<Agent> agents) {
    String column = agents.contains(Agent.FINES) ? "least-with-fines" : "least";
    Csv.Row row =
        TABLE.stream()
            .filter(r -> r.text("format").equals(Choice.plain(format)))
            .findFirst()
            .orElseThrow();
    return new SealantGauge(row.number(column), row.text("source"), OWN_COATS);
  }

  /** Gauge of seal that a layer adds to a run of sealable layers, µm; 0 for what does not seal. */
  double counted(LayerFigures layer) {
    if (!layer.seals()) {
      return 0;
    }
    return coats.stream()
        .filter(c -> c.layer().matches(layer.kinds()))
        .map(OwnCoat::countsAsUm)
        .findFirst()
        .orElse(1000 * layer.gaugeMm());
  }

  /** Whether the run of sealable layers goes on through a layer to what lies outside it. */
  boolean goesOn(LayerFigures layer) {
    return layer.seals() && coats.stream().noneMatch(c -> c.layer().matches(layer.kinds()));
  }

  private static List<OwnCoat> readCoats() {
    String text = Resources.text(SealantGauge.class, COATS);
    return Fields.list(
        JsonText.read(text, COATS),
        json ->
            Fields.read(
                json,
                f ->
                    new OwnCoat(
                        new KindExpression(f.text("layer")),
                        f.number("counts-as"),
                        f.text("reason"),
                        f.text("source"))));
  }
}
