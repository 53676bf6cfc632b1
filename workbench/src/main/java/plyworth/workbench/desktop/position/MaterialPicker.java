package plyworth.workbench.desktop.position;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.workbench.desktop.part.Field;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.Words;

/**
 * The materials at hand with a field to find them by. Typing filters, down leads into the list, and
 * Enter takes the marked one; it can be dragged as well.
 */
final class MaterialPicker {

  private static final int ROWS = 5;

  private final JTextField wanted = new JTextField();
  private final Field field = new Field("materials.find", wanted);
  private final DefaultListModel<Material> found = new DefaultListModel<>();
  private final JList<Material> list = new JList<>(found);
  private final JPanel panel = new JPanel(new BorderLayout(0, 4));
  private List<Material> materials = List.copyOf(MaterialLibrary.standard().all());

  /**
   * The materials.
   *
   * @param marked told which one is marked
   * @param taken told that the marked one is wanted
   */
  MaterialPicker(Consumer<Material> marked, Runnable taken) {
    list.setName("materials");
    list.getAccessibleContext().setAccessibleName(Words.of("picker.name"));
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setVisibleRowCount(ROWS);
    list.setCellRenderer(new Cells());
    list.setDragEnabled(true);
    list.setTransferHandler(new MaterialDrag());
    list.addListSelectionListener(event -> marked().ifPresent(marked));
    Typed.into(wanted, this::filter);
    wanted.addActionListener(event -> taken.run());
    Keys.bind(wanted, "DOWN", () -> step(1));
    Keys.bind(wanted, "UP", () -> step(-1));
    Keys.bind(list, "ENTER", taken);
    panel.add(field.component(), BorderLayout.NORTH);
    panel.add(new JScrollPane(list), BorderLayout.CENTER);
    filter();
  }

  JComponent component() {
    return panel;
  }

  /** Shows other materials; the one that is marked stays so where it is still there. */
  void show(Collection<Material> now) {
    if (!List.copyOf(now).equals(materials)) {
      Optional<Material> before = marked();
      materials = List.copyOf(now);
      filter();
      before.map(this::indexOf).filter(i -> i >= 0).ifPresent(list::setSelectedIndex);
    }
  }

  private int indexOf(Material material) {
    return IntStream.range(0, found.size())
        .filter(i -> found.get(i).id().equals(material.id()))
        .findFirst()
        .orElse(-1);
  }

  /** The material that is marked. */
  Optional<Material> marked() {
    return Optional.ofNullable(list.getSelectedValue());
  }

  /** Marks the first that answers to what is typed. */
  private void filter() {
    List<Material> now = MaterialSearch.find(materials, wanted.getText());
    found.clear();
    found.addAll(now);
    if (now.isEmpty()) {
      field.refuse(Words.of("picker.none", wanted.getText()));
    } else {
      field.accept();
      list.setSelectedIndex(wanted.getText().isBlank() ? -1 : 0);
    }
  }

  private void step(int by) {
    int to = Math.max(0, Math.min(found.size() - 1, list.getSelectedIndex() + by));
    list.setSelectedIndex(to);
    list.ensureIndexIsVisible(to);
  }

  /** Says that none is marked. */
  void ask() {
    field.refuse(Words.of("materials.ask"));
  }

  /** A material by its name, with its id behind. */
  private static final class Cells extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
        JList<?> shown, Object value, int index, boolean selected, boolean focused) {
      Material material = (Material) value;
      String text = Words.of("materials.entry", MaterialNames.of(material), material.id());
      super.getListCellRendererComponent(shown, text, index, selected, focused);
      String family = MaterialNames.family(material);
      setToolTipText(material.note().isEmpty() ? family : family + ": " + material.note());
      return this;
    }
  }
}
