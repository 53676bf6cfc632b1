package plyworth.shared.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.data.DataException;

class MaterialLibraryTest {

  private static final String MATERIALS =
      "id,name,family,kinds,basis,aliases,note\nfilm-a,Film A,test,web film,film,fa old-a,\n";

  private static final String PROPERTIES =
      "material,property,at,low,typical,high,unit,kind,source\n"
          + "film-a,density,,900,910,920,kg/m3,memory,from memory\n";

  @Test
  void materialIsFoundByIdAndByAlias() {
    MaterialLibrary library = MaterialLibrary.read(MATERIALS, PROPERTIES);
    assertThat(library.require("film-a").density()).isEqualTo(910);
    assertThat(library.find("old-a")).isEqualTo(library.find("film-a")).isPresent();
  }

  @Test
  void unknownMaterialIsRefusedWithTheNearest() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MaterialLibrary.standard().require("aluminum-foil"))
        .withMessage(
            "the material \"aluminum-foil\" is not in the library. "
                + "Did you mean \"aluminium-foil\"?");
  }

  @Test
  void ownMaterialStandsInPlaceOfTheLibrarys() {
    Material own = MaterialLibrary.read(MATERIALS, PROPERTIES).require("film-a");
    MaterialLibrary merged = MaterialLibrary.standard().with(List.of(own));
    assertThat(merged.all()).hasSize(MaterialLibrary.standard().all().size() + 1);
    assertThat(merged.with(List.of(own)).all()).hasSameSizeAs(merged.all());
  }

  @Test
  void materialThatStandsTwiceIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MaterialLibrary.read(MATERIALS + "film-a,B,t,web,film,,\n", PROPERTIES))
        .withMessageContaining("film-a stands twice");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "900,910,920|920,910,900|low ≤ typical ≤ high",
        "900,910,920|900,x,920|not a number",
        "kg/m3,memory|kg/m3,memroy|not a kind of source",
        "memory,from memory|memory,|needs a source",
        "film-a,density|film-b,density|has no density",
        "film-a,density,|film-a,weight,|has no density",
        "material,property,at|material,property,on|columns",
        ",kg/m3|,kg/m3,extra|10 cells"
      })
  void wrongFiguresAreRefusedWithTheirLine(String right, String wrong, String problem) {
    assertThatThrownBy(() -> MaterialLibrary.read(MATERIALS, PROPERTIES.replace(right, wrong)))
        .isInstanceOf(DataException.class)
        .hasMessageContaining(problem)
        .hasMessageContaining(", line ");
  }

  @Test
  void twoUnitsForOnePropertyAreRefused() {
    String twice = PROPERTIES + "film-a,density,5,900,910,920,g/cm3,memory,from memory\n";
    assertThatThrownBy(() -> MaterialLibrary.read(MATERIALS, twice))
        .hasMessageContaining("density is given in kg/m3 and in g/cm3");
  }
}
