package plyworth.workbench.analysis;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.study.Study;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.Sentences;

/**
 * An uncertain input as people know it.
 *
 * @param owner the material, process or plugin it belongs to
 * @param what its property, figure or setting
 * @param unit unit of its figures in plain spelling; empty where it has none, or nothing says which
 */
public record InputName(String owner, String what, String unit) {

  /** What stands behind the name under which a plugin draws an input. */
  public static InputName of(Ranked ranked, String id) {
    return of(ranked, id, Locale.ENGLISH, Material::name);
  }

  /**
   * The same in a language.
   *
   * @param named how materials are called
   */
  public static InputName of(
      Ranked ranked, String id, Locale locale, Function<Material, String> named) {
    int slash = id.indexOf('/');
    String owner = id.substring(0, Math.max(0, slash));
    String what = id.substring(slash + 1);
    Study study = ranked.study();
    Optional<InputName> text =
        owner.startsWith("@")
            ? study.processesAtHand().find(owner.substring(1)).map(p -> figure(p, what))
            : study.materialsAtHand().find(owner).map(m -> property(named.apply(m), m, what));
    return text.or(
            () ->
                ranked
                    .scored()
                    .compiled()
                    .prepared()
                    .catalog()
                    .find(owner)
                    .map(LoadedPlugin::plugin)
                    .map(p -> setting(p, what, locale)))
        .orElse(new InputName(owner, what, ""));
  }

  private static InputName property(String name, Material material, String id) {
    return new InputName(name, id, unit(material.property(id)));
  }

  private static InputName figure(Process process, String id) {
    return new InputName(process.name(), id, unit(Optional.ofNullable(process.figures().get(id))));
  }

  private static InputName setting(ScoringPlugin plugin, String id, Locale locale) {
    String title = Sentences.of(plugin, plugin.card().title(), locale);
    for (Parameter parameter : plugin.parameters()) {
      if (parameter.id().equals(id)) {
        String what = Sentences.of(plugin, parameter.title(), locale);
        return new InputName(title, what, parameter.unit());
      }
    }
    return new InputName(title, id, "");
  }

  private static String unit(Optional<Property> property) {
    return property.map(Property::unit).orElse("");
  }

  @Override
  public String toString() {
    return owner + ": " + what;
  }
}
