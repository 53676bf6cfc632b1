package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.brief.VolatileContent;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Today;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** Briefs, materials and contexts to test with; all invented unless a test names a source. */
public final class Bench {

  public static final BarrierPlugin PLUGIN = new BarrierPlugin();

  private Bench() {}

  /** A material with figures that do not depend on anything: id and figure in turn. */
  public static Material material(String id, Object... properties) {
    Map<String, Property> byId = new HashMap<>();
    byId.put(Material.DENSITY, exactly(Material.DENSITY, 1000));
    for (int i = 0; i < properties.length; i += 2) {
      String property = (String) properties[i];
      byId.put(property, exactly(property, ((Number) properties[i + 1]).doubleValue()));
    }
    return new Material(id, id, "test", Set.of("web"), "film", List.of(), byId, "");
  }

  private static Property exactly(String id, double figure) {
    Sourced point =
        new Sourced(Double.NaN, Range.exactly(figure), SourceKind.JUDGEMENT, "invented for a test");
    return new Property(id, "", List.of(point));
  }

  /** Something that can be packed. */
  public static Product product(
      double massG, MoistureLimit moisture, OxygenLimit oxygen, VolatileContent content) {
    return new Product(
        "test product",
        Product.Form.POWDER,
        massG,
        Set.of(),
        Optional.ofNullable(moisture),
        Optional.ofNullable(oxygen),
        Optional.ofNullable(content));
  }

  public static Pack sachet(double widthMm, double lengthMm, double sealMm) {
    return new Pack(Pack.Format.SACHET_FOUR_SIDE, widthMm, lengthMm, sealMm, 0, 0);
  }

  public static Brief brief(
      Product product, Pack pack, double celsius, double humidityPercent, double days) {
    Climate climate = new Climate("test climate", celsius, humidityPercent);
    Brief sample = SampleBriefs.sugarStick();
    return new Brief(
        product, climate, days, pack, sample.machine(), sample.market(), sample.order());
  }

  /** The standard library with more materials, every parameter at its standard. */
  public static ScoringContext context(Brief brief, Material... more) {
    Map<String, Double> parameters = new TreeMap<>();
    PLUGIN.parameters().forEach(p -> parameters.put(p.id(), p.standard()));
    return new ScoringContext(
        brief,
        MaterialLibrary.standard().with(List.of(more)),
        ProcessLibrary.standard(),
        parameters,
        Set.of(),
        Draw.TYPICAL);
  }

  /** The same with a baseline and what was measured on it. */
  public static ScoringContext with(
      ScoringContext context, String baseline, Measurement... measured) {
    return new ScoringContext(
        context.brief(),
        context.materials(),
        context.processes(),
        context.parameters(),
        context.available(),
        context.draw(),
        new Today(Optional.of(LayerNotation.readStructure(baseline)), List.of(measured)));
  }

  /** A measurement on five samples. */
  public static Measurement measured(String criterion, double value, double spread, String note) {
    return new Measurement(
        "barrier/" + criterion, value, "", spread, 5, "store trial", "2026-03-12", note);
  }

  public static PackBarrier barrier(ScoringContext context, String structure) {
    return PackBarrier.of(BarrierModel.of(context), LayerNotation.readStructure(structure));
  }

  public static PackBarrier barrier(ScoringContext context, Structure structure) {
    return PackBarrier.of(BarrierModel.of(context), structure);
  }

  /** The five films of the series check, oxygen only; water and activation are of no matter. */
  public static Material[] seriesFilms() {
    List<Material> films = new ArrayList<>();
    films.add(film("film-pet", 1600));
    films.add(film("film-glue", 40000));
    films.add(film("film-evoh", 8));
    films.add(film("film-pe", 190000));
    return films.toArray(Material[]::new);
  }

  private static Material film(String id, double o2) {
    return material(id, "o2-permeability", o2, "wv-permeability", 500);
  }
}
