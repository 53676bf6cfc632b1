package plyworth.shared.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.scoring.RandomStructures;
import plyworth.shared.scoring.SampleStructures;

class LayerNotationTest {

  @Test
  void anyLayerIsReadBackEqual() {
    Random random = new Random(3);
    for (int i = 0; i < 5000; i++) {
      Layer layer = RandomStructures.layer(random);
      assertThat(LayerNotation.readLayer(LayerNotation.write(layer))).isEqualTo(layer);
    }
  }

  @Test
  void anyStructureIsReadBackEqual() {
    for (Structure structure : SampleStructures.all()) {
      assertThat(LayerNotation.readStructure(structure.toString())).isEqualTo(structure);
    }
  }

  @Test
  void layerIsReadPartByPart() {
    assertThat(LayerNotation.readLayer(" ink-wb 1.5 g/m2 @flexo-water 40 % "))
        .isEqualTo(new Layer("ink-wb", 1.5, AmountUnit.GSM, "flexo-water", Side.UNSTATED, 0.4));
    assertThat(LayerNotation.readLayer("aluminium-foil 7 um !bright-out"))
        .isEqualTo(new Layer("aluminium-foil", 7, AmountUnit.UM, "", Side.BRIGHT_OUT, Double.NaN));
  }

  @ParameterizedTest
  @CsvSource({
    "bopet 48 ga, 12.192",
    "bopet 48 gauge, 12.192",
    "aluminium-foil 0.35 mil, 8.89",
    "aluminium-foil 30 nm, 0.03",
    "ldpe 7 lb/3000ft2, 11.3923",
    "ldpe 12 µm, 12",
    "kraft-paper 50 gsm, 50"
  })
  void unitsOfTheTradeAreConverted(String text, double amount) {
    assertThat(LayerNotation.readLayer(text).amount()).isCloseTo(amount, withinPercentage(1e-3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ldpe|write: material amount unit, for example \"ldpe 12 um\"",
        "ldpe 12|write: material amount unit",
        "ldpe twelve um|\"twelve\" is not a number",
        "ldpe 12 m|\"m\" is not a unit of a layer; use um, nm, mil, gauge, g/m2 or lb/3000ft2",
        "ldpe 12 g/(m2.day)|is not a unit of a layer",
        "ldpe 0 um|the amount of ldpe is 0.0; it must be greater than 0 µm",
        "ldpe -3 g/m2|the amount of ldpe is -3.0; it must be greater than 0 g/m²",
        "ldpe NaN um|the amount of ldpe is NaN",
        "foil 7 um !brihgt-out|\"brihgt-out\" is not a side. Did you mean \"bright-out\"?",
        "foil 7 um !unstated|\"unstated\" is not a side",
        "ink 1 g/m2 forty %|\"forty\" is not a number",
        "ink 1 g/m2 0 %|coverage of ink must be above 0 % and at most 100 %",
        "ink 1 g/m2 101 %|coverage of ink must be above 0 % and at most 100 %",
        "ink 1 g/m2 flexo|\"flexo\" is neither @process, !side nor a coverage in %"
      })
  void wrongLayerIsNamedWithWhatIsWrong(String text, String problem) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LayerNotation.readStructure("bopp 20 um / " + text))
        .withMessageContaining("in the layer \"" + text + "\"")
        .withMessageContaining(problem);
  }

  @Test
  void emptyPlaceBetweenSlashesIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LayerNotation.readStructure("bopp 20 um /  / ldpe 12 um"));
    assertThatIllegalArgumentException().isThrownBy(() -> LayerNotation.readStructure(""));
  }
}
