package plyworth.workbench.desktop.brief;

import java.awt.GridLayout;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Any of some words, each with a box to tick. */
final class ChecksInput implements BriefInput {

  private final JPanel panel = new JPanel(new GridLayout(0, 2, 8, 0));
  private final Map<String, JCheckBox> boxes = new LinkedHashMap<>();

  ChecksInput(Ask ask, Runnable changed) {
    for (String choice : ask.choices()) {
      JCheckBox box = new JCheckBox(ChoiceInput.title(ask, choice));
      box.setName("check:" + choice);
      box.addActionListener(event -> changed.run());
      boxes.put(choice, box);
      panel.add(box);
    }
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent target() {
    return boxes.values().iterator().next();
  }

  @Override
  public String text() {
    return boxes.entrySet().stream()
        .filter(entry -> entry.getValue().isSelected())
        .map(Map.Entry::getKey)
        .collect(Collectors.joining(", "));
  }

  @Override
  public void show(String text) {
    List<String> ticked = Arrays.asList(text.split(",\\s*"));
    boxes.forEach((choice, box) -> box.setSelected(ticked.contains(choice)));
  }
}
