package plyworth.workbench.desktop.brief;

import javax.swing.JComboBox;
import javax.swing.JComponent;
import plyworth.shared.brief.ClimateZones;
import plyworth.workbench.desktop.word.Words;

/** One of some words. */
final class ChoiceInput implements BriefInput {

  /** A choice, with its name on screen. */
  private record Named(String choice, String title) {
    @Override
    public String toString() {
      return title;
    }
  }

  private final JComboBox<Named> box = new JComboBox<>();

  ChoiceInput(Ask ask, Runnable changed) {
    ask.choices().forEach(choice -> box.addItem(new Named(choice, title(ask, choice))));
    box.setMaximumRowCount(12);
    box.addActionListener(event -> changed.run());
  }

  /** The name of a choice; a zone says its climate itself. */
  static String title(Ask ask, String choice) {
    return ask.words().isEmpty()
        ? ClimateZones.require(choice).name()
        : Words.of(ask.words() + choice);
  }

  @Override
  public JComponent component() {
    return box;
  }

  @Override
  public JComponent target() {
    return box;
  }

  @Override
  public String text() {
    return ((Named) box.getSelectedItem()).choice();
  }

  @Override
  public void show(String text) {
    for (int i = 0; i < box.getItemCount(); i++) {
      if (box.getItemAt(i).choice().equals(text)) {
        box.setSelectedIndex(i);
      }
    }
  }
}
