package plyworth.workbench.robustness.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Draw;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.robustness.LeaderStability;
import plyworth.workbench.robustness.WeightInterval;

class TurnSearchTest {

  private static final Structure PAPER = Structure.of(Layer.grams("kraft-paper", 50, ""));
  private static final Structure PAPER_AND_FOIL =
      Structure.of(Layer.grams("kraft-paper", 50, ""), Layer.web("aluminium-foil", 10));

  /** Paper alone leads: it is cheaper by more than a layer is worth. */
  private static final Duel DUEL = new Duel(ByHand.CATALOG, PAPER, PAPER_AND_FOIL);

  private static World world(double price, double layers, double dial) {
    Weighting weighting =
        new Weighting(
            "hand", Map.of("hand/price", price, "hand/layers", layers, "hand/dial", dial));
    Study study = BrothStudy.study().with(weighting);
    return World.of(study, DUEL.in(new World(study, Draw.TYPICAL)).model());
  }

  private static Input input(World world, String name) {
    return Inputs.of(DUEL, world).stream()
        .filter(input -> input.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Turns turns(World world, String name) {
    return TurnSearch.of(DUEL, world, input(world, name), false);
  }

  @Test
  void theInputsAreWhatThePluginsDrawTheirParametersTheOrderAndTheWeights() {
    assertThat(Inputs.of(DUEL, world(1, 1, 1)))
        .extracting(Input::name)
        .containsExactly(
            "hand/dial",
            "hand/strict",
            "aluminium-foil/price",
            "kraft-paper/price",
            "order/packs",
            "weight:hand/price",
            "weight:hand/layers",
            "weight:hand/dial");
  }

  @Test
  void anInputCarriesItsRangeAndTheTightestBounds() {
    Input price = input(world(1, 1, 0), "aluminium-foil/price");
    assertThat(price.unit()).isEqualTo("EUR/kg");
    assertThat(price.low()).isLessThan(price.present());
    assertThat(price.high()).isGreaterThan(price.present());
    assertThat(price.lowest()).isZero();
    assertThat(price.highest()).isEqualTo(1000);
  }

  /**
   * By hand: 10 µm of foil, 2700 kg/m³, are 0.027 kg/m². With weights of one half, paper leads by
   * (0.027 p − 0.1) / 2, which is level at p = 0.1 / 0.027.
   */
  @Test
  void theBreakEvenPriceOfFoilFollowsByHand() {
    Turns turns = turns(world(1, 1, 0), "aluminium-foil/price");
    assertThat(turns.turns()).hasSize(1);
    Turn turn = turns.nearest().orElseThrow();
    assertThat(turn.figure()).isCloseTo(0.1 / 0.027, within(1e-8));
    assertThat(turn.overtakes()).isTrue();
    assertThat(turn.step()).isFalse();
    assertThat(turns.input().credible(turn.figure())).isFalse();
  }

  /** By hand: the lead is w 0.027 p − (1 − w) 0.1, level at w = 0.1 / (0.1 + 0.027 p). */
  @Test
  void theWeightAtWhichTheLeadTurnsIsInClosedForm() {
    World world = world(1, 1, 0);
    double price = 0.027 * input(world, "aluminium-foil/price").present();
    Turns turns = turns(world, "weight:hand/price");
    assertThat(turns.points()).isZero();
    assertThat(turns.nearest().orElseThrow().figure())
        .isCloseTo(0.1 / (0.1 + price), within(1e-12));
    double others = turns(world, "weight:hand/layers").nearest().orElseThrow().figure();
    assertThat(others).isCloseTo(price / (0.1 + price), within(1e-12));
  }

  @Test
  void aWeightOnWhatBothAreLevelInTurnsNothing() {
    Structure same = Structure.of(Layer.grams("kraft-paper", 60, ""));
    Duel duel = new Duel(ByHand.CATALOG, PAPER, same);
    World world = world(1, 1, 0);
    Input layers = input(world, "weight:hand/layers");
    assertThat(TurnSearch.of(duel, world, layers, false).turns()).isEmpty();
  }

  /** By hand: the dial is worth more than 0.5 between 2.5 and 7.5. */
  @Test
  void aLeadThatComesBackIsFoundOnBothSides() {
    Turns turns = turns(world(0, 0, 1), "hand/dial");
    assertThat(turns.turns()).extracting(Turn::overtakes).containsExactly(true, false);
    assertThat(turns.turns().get(0).figure()).isCloseTo(2.5, within(1e-9));
    assertThat(turns.turns().get(1).figure()).isCloseTo(7.5, within(1e-9));
    assertThat(turns.nearest()).hasValue(turns.turns().get(0));
  }

  @Test
  void aBlockTurnsTheLeadByAStep() {
    Turns turns = turns(world(1, 1, 0), "hand/strict");
    assertThat(turns.turns()).hasSize(1);
    assertThat(turns.turns().get(0).figure()).isCloseTo(0.5, within(1e-9));
    assertThat(turns.turns().get(0).overtakes()).isTrue();
    assertThat(turns.turns().get(0).step()).isTrue();
  }

  @Test
  void whatDoesNotMatterTurnsNothing() {
    Turns turns = turns(world(1, 1, 0), "order/packs");
    assertThat(turns.turns()).isEmpty();
    assertThat(turns.nearest()).isEmpty();
    assertThat(turns.closestLead()).isPositive();
    assertThat(turns.closest()).isEqualTo(turns.input().present());
  }

  /**
   * By hand: beyond 1 EUR/m² nothing gets worth less. At 18 EUR/kg paper of 50 g/m² is worth 0.1
   * and paper with foil nothing, as much as a layer makes up for.
   */
  @Test
  void theEndOfAValueFunctionTurnsTheLeadToo() {
    Turns turns = turns(world(1, 1, 0), "kraft-paper/price");
    assertThat(turns.turns()).hasSize(1);
    assertThat(turns.turns().get(0).figure()).isCloseTo(18, within(1e-8));
  }

  @Test
  void aTableIsMovedAsAWholeAndNothingElse() {
    Input table = new Input(Input.Kind.TABLE, "a/b", "", 1, 0.5, 2, 0, 9);
    Draw moved = table.in(world(1, 1, 1), 3).draw();
    assertThat(moved.figure("a/b", new Range(1, 2, 4))).isEqualTo(6);
    assertThat(moved.figure("a/b", new Range(5, 7, 8))).isEqualTo(21);
    assertThat(moved.figure("a/c", new Range(1, 2, 4))).isEqualTo(2);
  }

  @Test
  void theSmallestRelativeChangeComesFirst() {
    World world = world(1, 1, 0);
    Sweep sweep = Sweep.of(DUEL, world, Inputs.of(DUEL, world), Progress.NONE);
    assertThat(sweep.complete()).isTrue();
    assertThat(sweep.turning())
        .extracting(turns -> turns.input().name())
        .containsExactly(
            "weight:hand/layers",
            "weight:hand/price",
            "aluminium-foil/price",
            "hand/strict",
            "kraft-paper/price");
    assertThat(sweep.turning().size() + sweep.others().size())
        .isEqualTo(Inputs.of(DUEL, world).size());
  }

  @Test
  void whatIsCancelledSaysSo() {
    World world = world(1, 1, 0);
    AtomicLong done = new AtomicLong();
    Progress afterTwo =
        new Progress() {
          @Override
          public void scored(long tried, long of) {
            done.incrementAndGet();
          }

          @Override
          public boolean cancelled() {
            return done.get() >= 2;
          }
        };
    Sweep sweep = Sweep.of(DUEL, world, Inputs.of(DUEL, world), afterTwo);
    assertThat(sweep.complete()).isFalse();
    assertThat(sweep.turning().size() + sweep.others().size()).isPositive();
  }

  @Test
  void theEndsOfAWeightIntervalAreTheTurnsAgainstTheirOvertakers() {
    Ranked ranked =
        SmallStudy.ranked(
            StudyFile.open(Path.of("../studies/isopropanol-wipe.study.json")).study());
    PluginCatalog catalog = ranked.scored().compiled().prepared().catalog();
    World world = World.of(ranked.study(), ranked.ranking().model());
    Structure leader = ranked.structure(ranked.best().get(0).path());
    int ends = 0;
    for (WeightInterval interval : LeaderStability.of(ranked)) {
      for (WeightInterval.End end : List.of(interval.lower(), interval.upper())) {
        if (end.overtaker().isPresent()) {
          Structure overtaker = ranked.structure(end.overtaker().getAsLong());
          Duel duel = new Duel(catalog, leader, overtaker);
          String name =
              "weight:"
                  + ranked.ranking().model().criteria().get(interval.criterion()).criterion().id();
          Input weight =
              Inputs.of(duel, world).stream()
                  .filter(input -> input.name().equals(name))
                  .findFirst()
                  .orElseThrow();
          assertThat(TurnSearch.of(duel, world, weight, true).nearest().orElseThrow().figure())
              .isCloseTo(end.weight(), within(1e-9));
          ends++;
        }
      }
    }
    assertThat(ends).isPositive();
  }

  @Test
  void onEitherSideOfATurnTheOneAndTheOtherLeads() {
    Ranked ranked =
        Ranked.of(
            Compiled.of(Prepared.of(BrothStudy.study(), BrothStudy.plugins()), () -> false),
            2,
            Optional.empty(),
            Progress.NONE);
    World world = World.of(ranked.study(), ranked.ranking().model());
    Duel duel =
        new Duel(
            ranked.scored().compiled().prepared().catalog(),
            ranked.structure(ranked.best().get(0).path()),
            ranked.structure(ranked.best().get(1).path()));
    List<Input> some =
        Inputs.of(duel, world).stream()
            .filter(input -> input.name().matches("(ink-wb|ink-nc|@flexo-water|order)/.*"))
            .toList();
    Sweep sweep = Sweep.of(duel, world, some, Progress.NONE);
    assertThat(sweep.turning()).hasSizeGreaterThan(5);
    for (Turns turns : sweep.turning()) {
      Turn turn = turns.nearest().orElseThrow();
      double beyond = turns.beyond(turn);
      double before = 2 * turn.figure() - beyond;
      assertThat(duel.in(turns.input().in(world, beyond)).lead())
          .as(turns.input().name())
          .isNegative();
      assertThat(duel.in(turns.input().in(world, before)).lead())
          .as(turns.input().name())
          .isPositive();
    }
  }
}
