package plyworth.workbench.desktop.position;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Material;
import plyworth.shared.route.Process;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

/** Changes to the positions of a study. */
class PositionEditsTest {

  private static final int BARRIER = 3;
  private static final Option SIOX = Option.of(Layer.web("bopet-siox", 12));

  private final Study study = SmallStudy.few();

  private static List<Option> options(Study study, int position) {
    return study.positions().get(position).options();
  }

  private static List<String> titles(Study study) {
    return study.positions().stream().map(Position::title).toList();
  }

  @Test
  void anOptionBringsItsMaterialAndProcessAlong() {
    Option coated =
        Option.of(Layer.web("bopp", 20), Layer.grams("pvdc-coating", 2, "dispersion-coating"));
    Study changed = PositionEdits.add(study, BARRIER, List.of(coated));
    assertThat(options(changed, BARRIER)).endsWith(coated);
    assertThat(changed.materials()).extracting(Material::id).contains("bopp", "pvdc-coating");
    assertThat(changed.processes()).extracting(Process::id).contains("dispersion-coating");
  }

  @Test
  void whatStandsThereAlreadyIsNotAddedTwice() {
    Study once = PositionEdits.add(study, BARRIER, List.of(SIOX));
    assertThat(PositionEdits.add(once, BARRIER, List.of(SIOX))).isEqualTo(once);
  }

  @Test
  void theLastOptionOfAPositionStays() {
    Study single = PositionEdits.insert(study, 0, "Outer coating");
    assertThat(PositionEdits.remove(single, 0, 0)).isEqualTo(single);
    assertThat(PositionEdits.allowNothing(single, 0, false).positions())
        .isEqualTo(single.positions());
  }

  @Test
  void anOptionThatBecomesLikeAnotherGoes() {
    Study changed = PositionEdits.replace(study, BARRIER, 1, options(study, BARRIER).get(2));
    assertThat(options(changed, BARRIER)).hasSize(2).doesNotHaveDuplicates();
  }

  @Test
  void nothingStandsFirstWhereItIsAllowed() {
    Study refused = PositionEdits.allowNothing(study, BARRIER, false);
    assertThat(options(refused, BARRIER)).doesNotContain(Option.NOTHING);
    Study allowed = PositionEdits.allowNothing(refused, BARRIER, true);
    assertThat(options(allowed, BARRIER)).isEqualTo(options(study, BARRIER));
  }

  @Test
  void positionsAreAddedRenamedMovedAndTakenOut() {
    Study added = PositionEdits.insert(study, 1, "Varnish");
    assertThat(titles(added)).startsWith("Print", "Varnish", "Outer web");
    assertThat(titles(PositionEdits.rename(added, 1, "Lacquer"))).startsWith("Print", "Lacquer");
    assertThat(titles(PositionEdits.move(added, 1, -1))).startsWith("Varnish", "Print");
    assertThat(titles(PositionEdits.drop(added, 1))).isEqualTo(titles(study));
  }

  @Test
  void thereIsNoMovingBeyondTheEnds() {
    assertThat(PositionEdits.move(study, 0, -1)).isEqualTo(study);
    assertThat(PositionEdits.move(study, study.positions().size() - 1, 1)).isEqualTo(study);
  }
}
