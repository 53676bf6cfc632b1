package plyworth.workbench.desktop.material;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.PropertyNames;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Scale;

/** Changes one property of the study's own copy of a material. */
final class PropertyDialog {

  private static final int MARGIN = 40;
  private static final Dimension LARGEST = new Dimension(1100, 560);
  private static final int ROOM = 24;

  private final Session session;
  private final Material material;
  private final MaterialRows.Row row;
  private final JDialog dialog;
  private final FigureGrid grid;
  private final JTextArea message = StackPanel.words("", Font.BOLD);

  /**
   * A dialog.
   *
   * @param customary whether figures are shown in US customary units at first
   */
  PropertyDialog(
      Component over, Session session, Material material, MaterialRows.Row row, boolean customary) {
    this.session = session;
    this.material = material;
    this.row = row;
    dialog =
        new JDialog(
            SwingUtilities.getWindowAncestor(over),
            Words.of("property.title", row.name(), MaterialNames.of(material)),
            JDialog.ModalityType.APPLICATION_MODAL);
    dialog.setName("property");
    grid = new FigureGrid(row, customary, this::fit);
    message.setName("property-message");
    message.setVisible(false);
    StackPanel figures = new StackPanel();
    figures.add(grid.component());
    JScrollPane scroll = new JScrollPane(figures);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    dialog.add(head(customary), BorderLayout.NORTH);
    dialog.add(scroll, BorderLayout.CENTER);
    dialog.add(foot(), BorderLayout.SOUTH);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent event) {
            grid.target().requestFocusInWindow();
          }
        });
    fit();
    dialog.setLocationRelativeTo(over);
  }

  private JComponent head(boolean customary) {
    JComboBox<String> system = UnitChoice.box("property-units", customary);
    JLabel units = new JLabel(grid.units());
    units.setName("property-unit");
    system.addActionListener(
        event -> {
          grid.show(UnitChoice.customary(system));
          units.setText(grid.units());
        });
    JPanel choice = new JPanel(new FlowLayout(FlowLayout.LEADING, 6, 4));
    choice.add(Marked.label("materials.units", system));
    choice.add(system);
    choice.add(units);
    StackPanel head = new StackPanel();
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 2, 12));
    head.add(StackPanel.words(row.meaning(), Font.PLAIN));
    String known = String.join(", ", Scale.of(row.unit(), customary).symbols()).strip();
    if (!known.isEmpty()) {
      head.add(StackPanel.words(Words.of("property.units-hint", known), Font.PLAIN));
    }
    head.add(choice);
    return head;
  }

  private JComponent foot() {
    Command save = Command.of("property.save", null, this::save);
    Command band = Command.of("property.band", null, grid::keepBand);
    Command add = Command.of("property.add", null, grid::addPoint);
    Command leave = Command.of("written.leave", null, dialog::dispose);
    JButton saving = save.named(new JButton(save), "button:");
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    if (grid.isTable()) {
      buttons.add(add.named(new JButton(add), "button:"));
    }
    buttons.add(band.named(new JButton(band), "button:"));
    buttons.add(saving);
    buttons.add(leave.named(new JButton(leave), "property:"));
    Keys.answer(dialog, saving, leave);
    StackPanel foot = new StackPanel();
    message.setBorder(BorderFactory.createEmptyBorder(0, 12, 4, 12));
    foot.add(message);
    foot.add(buttons);
    return foot;
  }

  /** As high as what stands in it, within reason. */
  private void fit() {
    if (dialog == null || grid == null) {
      return;
    }
    if (!dialog.isDisplayable()) {
      dialog.pack();
    }
    Dimension screen = dialog.getToolkit().getScreenSize();
    Dimension largest = UIScale.scale(LARGEST);
    largest.width = Math.min(largest.width, screen.width - MARGIN);
    largest.height = Math.min(largest.height, screen.height - MARGIN);
    dialog.setSize(largest);
    dialog.validate();
    Dimension wanted = dialog.getPreferredSize();
    dialog.setSize(largest.width, Math.min(largest.height, wanted.height + UIScale.scale(ROOM)));
    dialog.validate();
  }

  void open() {
    dialog.setVisible(true);
  }

  private void save() {
    Optional<Property> read = Optional.empty();
    String wrong = "";
    try {
      read = grid.read(row.id());
      wrong = read.flatMap(this::objection).orElse("");
    } catch (IllegalArgumentException e) {
      wrong = Words.of("property.several");
    }
    message.setText(Reason.of(wrong));
    message.setVisible(!wrong.isEmpty());
    fit();
    if (read.isPresent() && wrong.isEmpty()) {
      dialog.dispose();
      take(read.get());
    }
  }

  private Optional<String> objection(Property property) {
    Material changed = material.with(property);
    return StudyMaterials.objection(
        StudyMaterials.with(session.study().orElseThrow(), changed), changed, session.installed());
  }

  private void take(Property property) {
    session.reckonWith(
        () ->
            Words.of("edit.property", PropertyNames.of(property.id()), MaterialNames.of(material)),
        study ->
            StudyMaterials.with(
                study, study.materialsBefore().require(material.id()).with(property)));
  }
}
