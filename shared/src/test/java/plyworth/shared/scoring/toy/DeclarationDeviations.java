package plyworth.shared.scoring.toy;

import java.util.ArrayList;
import java.util.List;
import java.util.ListResourceBundle;
import java.util.Locale;
import java.util.ResourceBundle;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.PluginCard;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;

/** Plugins whose declarations each break one rule. */
final class DeclarationDeviations {

  private DeclarationDeviations() {}

  static List<Deviation> all() throws ReflectiveOperationException {
    return List.of(
        new Deviation("idsAreWellFormedAndUnique", new ParameterTwice()),
        new Deviation("valueFunctionsFollowTheDirectionOfTheirCriterion", new MoreIsWorse()),
        new Deviation("declaredPropertiesAgreeWithTheLibrary", new OtherCurrency()),
        new Deviation("declaredPropertiesAgreeWithTheLibrary", new KeyWithoutSentence()),
        new Deviation("settingsAndWeightsSurviveTheStudyFile", new BoundlessParameter()),
        new Deviation("cautionsSaySomething", new SilentCaution()),
        new Deviation("everyTextMakesASentence", new MissingKey()),
        new Deviation("neitherDrawsNorOpensWindows", drawing()));
  }

  private static ScoringPlugin drawing() throws ReflectiveOperationException {
    String name = ToyPlugin.class.getPackageName() + ".DrawingToyPlugin";
    return (ScoringPlugin) Class.forName(name).getDeclaredConstructor().newInstance();
  }

  private static final class ParameterTwice extends ToyPlugin {
    @Override
    public List<Parameter> parameters() {
      List<Parameter> twice = new ArrayList<>(super.parameters());
      twice.add(twice.get(0));
      return twice;
    }
  }

  private static final class MoreIsWorse extends ToyPlugin {
    @Override
    public List<Criterion> criteria() {
      List<Criterion> criteria = new ArrayList<>(super.criteria());
      Criterion c = criteria.get(0);
      criteria.set(
          0,
          new Criterion(
              c.id(),
              c.title(),
              c.unit(),
              c.conditions(),
              c.direction(),
              ValueFunction.linear(0, 0, 100, 1),
              c.weight(),
              c.classes(),
              c.formula()));
      return criteria;
    }
  }

  private static final class OtherCurrency extends ToyPlugin {
    @Override
    public List<PropertyDefinition> properties() {
      return List.of(
          new PropertyDefinition(
              PRICE, "EUR/t", "price of the material", PropertyDefinition.Along.GAUGE, 0, 1e4));
    }
  }

  private static final class KeyWithoutSentence extends ToyPlugin {
    @Override
    public List<PropertyDefinition> properties() {
      return List.of(
          new PropertyDefinition(
              PRICE, "EUR/kg", "property.prize", PropertyDefinition.Along.GAUGE, 0, 1000));
    }
  }

  private static final class BoundlessParameter extends ToyPlugin {
    @Override
    public List<Parameter> parameters() {
      List<Parameter> boundless = new ArrayList<>(super.parameters());
      Text title = Text.of("speed");
      boundless.add(new Parameter("spare", title, "", 0, 0, Double.POSITIVE_INFINITY, title));
      return boundless;
    }
  }

  private static final class SilentCaution extends ToyPlugin {
    @Override
    public ResourceBundle texts(Locale locale) {
      ResourceBundle others = super.texts(locale);
      return new ListResourceBundle() {
        {
          setParent(others);
        }

        @Override
        protected Object[][] getContents() {
          return new Object[][] {{"caution", " "}};
        }
      };
    }
  }

  private static final class MissingKey extends ToyPlugin {
    @Override
    public PluginCard card() {
      PluginCard card = super.card();
      return new PluginCard(card.id(), Text.of("tilte"), card.version(), card.cautions());
    }
  }
}
