package plyworth.workbench.studies;

import java.util.List;
import plyworth.shared.scoring.Finding;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.ranking.Group;

/**
 * A structure as it comes out in a study.
 *
 * @param sheet all that is known of it
 */
record ScoredStructure(Sheet sheet) {

  /** A figure by full criterion id; NaN when unknown. */
  double figure(String criterion) {
    int slash = criterion.indexOf('/');
    return sheet
        .assessments()
        .get(criterion.substring(0, slash))
        .figure(criterion.substring(slash + 1));
  }

  double margin() {
    return figure("barrier/margin");
  }

  double days() {
    return figure("barrier/shelf-life");
  }

  /** Whether the product keeps for the shelf life of the brief. */
  boolean keeps() {
    return margin() >= 1;
  }

  boolean hasFoil() {
    return holds("aluminium-foil");
  }

  /** Whether a layer is of that material. */
  boolean holds(String material) {
    return sheet.structure().layers().stream().anyMatch(l -> l.material().equals(material));
  }

  boolean blocked() {
    return sheet.group() == Group.BLOCKED;
  }

  /** The rules, as {@code plugin/rule}, of the findings of a level. */
  List<String> rules(Finding.Level level) {
    return sheet.remarks().stream()
        .filter(r -> r.finding().level() == level)
        .map(r -> r.plugin() + "/" + r.finding().rule())
        .toList();
  }

  List<String> blocks() {
    return rules(Finding.Level.BLOCKS);
  }

  List<String> warnings() {
    return rules(Finding.Level.WARNS);
  }

  /** The rules of the neighbours that it breaks. */
  List<String> refusedBy() {
    return sheet.objections().stream().map(o -> o.rule()).toList();
  }

  @Override
  public String toString() {
    return sheet.structure().toString();
  }
}
