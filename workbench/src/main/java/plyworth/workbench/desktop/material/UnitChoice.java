package plyworth.workbench.desktop.material;

import javax.swing.JComboBox;
import plyworth.workbench.desktop.word.Words;

/** A choice between metric and US customary units. */
final class UnitChoice {

  private UnitChoice() {}

  static JComboBox<String> box(String name, boolean customary) {
    JComboBox<String> box = new JComboBox<>();
    box.setName(name);
    box.addItem(Words.of("units.metric"));
    box.addItem(Words.of("units.customary"));
    box.setSelectedIndex(customary ? 1 : 0);
    return box;
  }

  static boolean customary(JComboBox<String> box) {
    return box.getSelectedIndex() == 1;
  }
}
