package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

class StudyMaterialsTest {

  private static final Study STUDY = SmallStudy.few();

  private static Material material(String id) {
    return STUDY.materialsBefore().require(id);
  }

  private static Property price(double figure) {
    return new Property(
        "price",
        "EUR/kg",
        List.of(new Sourced(Double.NaN, Range.exactly(figure), SourceKind.MEASURED, "an offer")));
  }

  @Test
  void everyPlaceOfAMaterialIsFound() {
    List<MaterialUse> uses = MaterialUse.of(STUDY, "ldpe");
    assertThat(uses.stream().filter(u -> u.where() == MaterialUse.Where.OPTION)).hasSize(5);
    assertThat(uses.stream().map(MaterialUse::position)).contains("Bond", "Sealant");
    assertThat(uses.stream().filter(u -> u.where() == MaterialUse.Where.BASELINE)).hasSize(1);
    assertThat(MaterialUse.of(STUDY, "bopet")).isEmpty();
    assertThat(MaterialUse.used(STUDY)).contains("ldpe", "kraft-paper").doesNotContain("bopet");
  }

  @Test
  void aCopyIsOwnAndCanBeTakenOutAgain() {
    Study with =
        StudyMaterials.with(STUDY, material("kraft-paper").named("kraft-mill-b", "Kraft, mill B"));
    assertThat(StudyMaterials.own(with, "kraft-mill-b")).isTrue();
    assertThat(with.materialsBefore().require("kraft-mill-b").properties())
        .isEqualTo(material("kraft-paper").properties());
    assertThat(StudyMaterials.without(with, "kraft-mill-b")).isEqualTo(STUDY);
  }

  @Test
  void whatIsUsedIsNotTakenOut() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> StudyMaterials.without(STUDY, "ldpe"))
        .withMessageContaining("the study uses ldpe in 6 places");
  }

  @Test
  void aFigureBeyondItsBoundsIsObjectedToWithBoundAndPlugin() {
    Material dear = material("ldpe").with(price(1e9));
    assertThat(StudyMaterials.objection(StudyMaterials.with(STUDY, dear), dear, SmallStudy.CATALOG))
        .hasValueSatisfying(
            text -> assertThat(text).contains("must lie between").contains("the plugin "));
    Material fair = material("ldpe").with(price(1.5));
    assertThat(StudyMaterials.objection(StudyMaterials.with(STUDY, fair), fair, SmallStudy.CATALOG))
        .isEmpty();
  }

  @Test
  void theRankingMovesWithAPrice() {
    Ranked before = SmallStudy.ranked(STUDY);
    BestList then = BestList.kinds(before, 10);
    Material sealant =
        material(before.structure(before.best().get(0).path()).innermost().material());
    Study dearer = StudyMaterials.with(STUDY, sealant.with(price(60)));
    Ranked now = SmallStudy.ranked(dearer);
    RankingMove move = RankingMove.between(before, then, now, BestList.kinds(now, 10));
    assertThat(move.newLeader()).isTrue();
    assertThat(move.sameOrder()).isFalse();
    assertThat(move.risen() + move.entered()).isPositive();
    assertThat(move.moves().stream().filter(RankingMove.Move::rose))
        .allSatisfy(m -> assertThat(m.now().getAsInt()).isLessThan(m.before().getAsInt()));
    assertThat(move.moves().get(0).structure()).isEqualTo(now.structure(now.best().get(0).path()));
  }

  @Test
  void nothingMovesBetweenARankingAndItself() {
    Ranked ranked = SmallStudy.ranked(STUDY);
    BestList list = BestList.kinds(ranked, 10);
    RankingMove move = RankingMove.between(ranked, list, ranked, list);
    assertThat(move.sameOrder()).isTrue();
    assertThat(move.newLeader()).isFalse();
    assertThat(move.moves()).hasSize(list.entries().size());
  }
}
