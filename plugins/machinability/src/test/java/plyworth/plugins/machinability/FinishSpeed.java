package plyworth.plugins.machinability;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Machine.SealZone;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;

/** Prints how long it takes to finish blocks of joined laminates, per candidate, zone by zone. */
public final class FinishSpeed {

  private static final int ROWS = 512;
  private static final int BLOCKS = 16;
  private static final int PASSES = 20;
  private static final int ROUNDS = 31;
  private static final MachinabilityPlugin PLUGIN = new MachinabilityPlugin();

  private static final List<List<String>> POSITIONS =
      List.of(
          List.of("ink-wb 1.5 g/m2 @flexo-water 40 %", "ink-nc 1.5 g/m2 @flexo-solvent 40 %"),
          List.of(
              "kraft-paper 40 g/m2",
              "kraft-paper 60 g/m2",
              "clay-coated-paper 50 g/m2",
              "glassine 50 g/m2",
              "bopp 20 um",
              "bopet 12 um"),
          List.of(
              "ldpe 12 um @extrusion-lamination",
              "eaa 15 um @extrusion-lamination",
              "adhesive-pu-solventless 1.8 g/m2 @solventless"),
          List.of(
              "aluminium-foil 7 um !bright-out",
              "bopet-met 12 um !metal-in",
              "bopp-met 18 um !metal-out",
              "mdo-pe-evoh 25 um",
              "bopa 15 um"),
          List.of("ldpe 15 um @extrusion-lamination", "adhesive-pu-solvent 3 g/m2 @dry-bond"),
          List.of(
              "ldpe 30 um", "lldpe 50 um", "mlldpe 40 um", "cpp 30 um", "cpp-terpolymer 30 um"));

  private FinishSpeed() {}

  /** Measures and prints; the first turn leaves time to compile and is not printed. */
  public static void main(String[] arguments) {
    for (int turn = 0; turn < 2; turn++) {
      for (SealZone zone : SealZone.values()) {
        Layerwise form = scorer(zone).layerwise().orElseThrow();
        Random random = new Random(1);
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < BLOCKS; i++) {
          blocks.add(block(form, random));
        }
        double nanos = nanos(form, blocks);
        if (turn > 0) {
          System.out.println(
              String.format(Locale.ROOT, "%-13s %6.0f ns per candidate", zone, nanos));
        }
      }
    }
  }

  /** Processor time of this thread, median over rounds. */
  private static double nanos(Layerwise form, List<Block> blocks) {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    double[] rounds = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      long start = clock.getCurrentThreadCpuTime();
      for (int pass = 0; pass < PASSES; pass++) {
        blocks.forEach(form::finish);
      }
      rounds[round] = (clock.getCurrentThreadCpuTime() - start) / (1.0 * PASSES * BLOCKS * ROWS);
    }
    Arrays.sort(rounds);
    return rounds[ROUNDS / 2];
  }

  private static Block block(Layerwise form, Random random) {
    int size = StatePart.size(form.state());
    Block block = new Block(size, 0, PLUGIN.criteria().size(), PLUGIN.provides().size(), ROWS);
    block.size = ROWS;
    for (int row = 0; row < ROWS; row++) {
      double[] state = laminate(form, size, random);
      for (int k = 0; k < size; k++) {
        block.states[k][row] = state[k];
      }
    }
    return block;
  }

  private static double[] laminate(Layerwise form, int size, Random random) {
    double[] joined = new double[size];
    StatePart.neutral(form.state(), joined);
    Layer outer = null;
    for (List<String> options : POSITIONS) {
      Layer layer = LayerNotation.readLayer(options.get(random.nextInt(options.size())));
      double[] own = new double[size];
      StatePart.neutral(form.state(), own);
      form.contribute(layer, outer, own);
      double[] both = new double[size];
      StatePart.join(form.state(), joined, own, both);
      joined = both;
      outer = layer;
    }
    return joined;
  }

  private static Scorer scorer(SealZone zone) {
    Brief brief = SampleBriefs.sugarStick();
    Map<String, Double> parameters = new HashMap<>();
    PLUGIN.parameters().forEach(p -> parameters.put(p.id(), p.standard()));
    return PLUGIN.bind(
        new ScoringContext(
            new Brief(
                brief.product(),
                brief.climate(),
                brief.shelfLifeDays(),
                brief.pack(),
                in(brief.machine(), zone),
                brief.market(),
                brief.order()),
            MaterialLibrary.standard(),
            ProcessLibrary.standard(),
            parameters,
            Set.of(),
            Draw.TYPICAL));
  }

  private static Machine in(Machine m, SealZone zone) {
    return new Machine(
        m.name(),
        m.lanes(),
        m.jawC(),
        m.jawSpreadK(),
        m.contactWm2K(),
        m.dwellS(),
        zone,
        m.feedMs(),
        m.accelerationMs2(),
        m.jawTravelS(),
        m.dwellFactor(),
        m.coolS(),
        m.fillLimitPerMinute(),
        m.hourRateEur(),
        m.efficiency(),
        m.packingWaste());
  }
}
