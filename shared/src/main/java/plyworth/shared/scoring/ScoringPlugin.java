package plyworth.shared.scoring;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import plyworth.shared.material.PropertyDefinition;

/**
 * A plugin that measures criteria on structures.
 *
 * <p>Found by {@link java.util.ServiceLoader}: a public class with a public constructor without
 * arguments, named in {@code META-INF/services/plyworth.shared.scoring.ScoringPlugin}. The jar's
 * manifest carries {@code Plyworth-Plugin} (the id) and {@code Plyworth-Interface-Level}.
 */
public interface ScoringPlugin {

  /** Who the plugin is. */
  PluginCard card();

  /** The material properties it reads. */
  List<PropertyDefinition> properties();

  /** The numbers a user may set. */
  List<Parameter> parameters();

  /** What it measures; the order is that of {@link Block#low}. */
  List<Criterion> criteria();

  /** The rules by which it can block a candidate; the order is that of the bits; at most 64. */
  List<BlockingRule> blockingRules();

  /** Figures it hands to other plugins; the order is that of {@link Block#provided}. */
  List<Figure> provides();

  /** Figures it takes from other plugins; the order is that of {@link Block#needed}. */
  List<Figure> needs();

  /**
   * A scorer for one brief, library, set of parameters and draw of the uncertain inputs.
   *
   * @throws IllegalArgumentException when the brief cannot be scored at all, with what to change
   */
  Scorer bind(ScoringContext context);

  /**
   * The same as {@link #bind}, in another world: of a scorer that this plugin bound to the same
   * context but for the draw, it may keep what no draw moves. Asked thousands of times where worlds
   * are drawn at random.
   *
   * @param before a scorer for the same context but for the draw; stays as it is
   */
  default Scorer bindAgain(ScoringContext context, Scorer before) {
    return bind(context);
  }

  /**
   * The sentences behind every {@link Text} of this plugin. By default the resource bundle {@code
   * texts} in the plugin's own package, {@code texts_zh_CN} beside it for Simplified Chinese and so
   * on.
   *
   * <p>A word that stands in a table, as the label of a bar or as an argument is looked up there as
   * well: as a key, then under {@code term.} and the word itself, small and with hyphens for all
   * that is no letter or digit; what is not there is shown as it stands. A language that the plugin
   * does not carry gets the plain one, whatever the system speaks.
   */
  default ResourceBundle texts(Locale locale) {
    return ResourceBundle.getBundle(
        getClass().getPackageName() + ".texts",
        locale,
        getClass().getClassLoader(),
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }
}
