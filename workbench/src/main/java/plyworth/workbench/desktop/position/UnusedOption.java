package plyworth.workbench.desktop.position;

import java.awt.Font;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.EmptyOffer;
import plyworth.workbench.analysis.OptionUse;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Words;

/** Says of a selected option that no candidate uses, which rule keeps it out. */
final class UnusedOption {

  private final JTextArea text = StackPanel.words(" ", Font.PLAIN);
  private final StackPanel panel = StackPanel.note(text);
  private final Background work = new Background();
  private Study asked;
  private OptionTable.At at;

  UnusedOption() {
    text.setName("option-unused");
    panel.setVisible(false);
  }

  JComponent component() {
    return panel;
  }

  /** Looks at the selected option. */
  void show(Study study, Optional<FlowFigures> counted, Optional<OptionTable.At> selected) {
    Optional<OptionTable.At> unused =
        selected.filter(s -> counted.filter(f -> isUnused(f, s)).isPresent());
    if (unused.isEmpty()) {
      work.cancel();
      asked = null;
      panel.setVisible(false);
    } else if (study != asked || !unused.get().equals(at)) {
      asked = study;
      at = unused.get();
      OptionTable.At option = at;
      work.run(
          stale -> OptionUse.of(study, option.position(), option.option()),
          use -> say(said(use)),
          this::say);
    }
  }

  private static boolean isUnused(FlowFigures counted, OptionTable.At at) {
    return counted.offer().flows().candidates() > 0
        && counted.offer().flows().through(at.position(), at.option()) == 0;
  }

  private void say(String words) {
    text.setText(words);
    panel.setVisible(true);
    panel.revalidate();
  }

  private static String said(OptionUse use) {
    if (use.candidates().signum() > 0) {
      return Words.of("unused.further-out", use.candidates());
    } else if (use.obstacles().isEmpty()) {
      return Words.of("unused.rules");
    }
    EmptyOffer.Obstacle first = use.obstacles().get(0);
    return Words.of("unused.rule", first.rule().id(), first.rule().reason(), first.candidates());
  }
}
