package plyworth.workbench.desktop.evidence;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.desktop.part.EntryForm;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;

/** A choice of criteria that have a figure which can be measured, with what each is. */
final class CriterionChoice {

  private final Ranked ranked;
  private final Optional<Sheet> sheet;
  private final List<BoundCriterion> offered;
  private final JComboBox<String> box = new JComboBox<>();
  private final JTextArea help = StackPanel.words("", Font.PLAIN);

  /**
   * A choice.
   *
   * @param sheet what is predicted of what is measured; empty where that is not at hand
   */
  CriterionChoice(Ranked ranked, Optional<Sheet> sheet) {
    this.ranked = ranked;
    this.sheet = sheet;
    offered =
        ranked.scored().compiled().prepared().bound().criteria().stream()
            .filter(CriterionChoice::measurable)
            .toList();
    box.setName("reading-criterion");
    help.setName("reading-help");
    offered.forEach(criterion -> box.addItem(CriterionWords.title(ranked, criterion)));
  }

  /** Whether it has figures in this brief, not classes. */
  static boolean measurable(BoundCriterion criterion) {
    return criterion.applies() && criterion.criterion().classes().isEmpty();
  }

  void addTo(EntryForm form, Runnable changed) {
    form.add("reading.criterion", box, null);
    form.below(help);
    box.addActionListener(
        event -> {
          explain();
          changed.run();
        });
    explain();
  }

  private void explain() {
    help.setText(CriterionWords.plainHelp(ranked, chosen()) + predicted());
  }

  private String predicted() {
    int place = ranked.scored().compiled().prepared().bound().criteria().indexOf(chosen());
    return sheet
        .map(s -> CriterionWords.figure(ranked, chosen(), s.outcomes().get(place).orUnknown()))
        .map(figure -> (figure + " " + CriterionWords.unit(chosen())).strip())
        .map(figure -> "\n" + Words.of("reading.predicted", figure))
        .orElse("");
  }

  JComponent field() {
    return box;
  }

  BoundCriterion chosen() {
    return offered.get(box.getSelectedIndex());
  }

  /** Chooses a criterion by its full id. */
  void choose(String id) {
    List<String> ids = offered.stream().map(BoundCriterion::id).toList();
    if (ids.contains(id)) {
      box.setSelectedIndex(ids.indexOf(id));
    }
  }
}
