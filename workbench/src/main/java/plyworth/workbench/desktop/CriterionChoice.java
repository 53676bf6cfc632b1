package plyworth.workbench.desktop;

import java.awt.Font;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;

/** A choice of criteria that have a figure which can be measured, with what each is. */
final class CriterionChoice {

  private final Ranked ranked;
  private final List<BoundCriterion> offered;
  private final JComboBox<String> box = new JComboBox<>();
  private final JTextArea help = StackPanel.words("", Font.PLAIN);

  CriterionChoice(Ranked ranked) {
    this.ranked = ranked;
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
    help.setText(CriterionWords.plainHelp(ranked, chosen()));
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
