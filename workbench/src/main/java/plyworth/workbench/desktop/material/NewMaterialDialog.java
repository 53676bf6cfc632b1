package plyworth.workbench.desktop.material;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.Words;

/** Asks for id and name of a material that begins as a copy of another. */
final class NewMaterialDialog {

  private static final Dimension SIZE = new Dimension(520, 270);

  private final Material like;
  private final MaterialLibrary library;
  private final Consumer<Material> taken;
  private final JDialog dialog;
  private final JTextField id = new JTextField();
  private final JTextField name = new JTextField();
  private final JTextArea message = StackPanel.words("", Font.BOLD);

  /**
   * A dialog.
   *
   * @param library ids that are taken
   * @param taken told the new material
   */
  NewMaterialDialog(
      Component over, Material like, MaterialLibrary library, Consumer<Material> taken) {
    this.like = like;
    this.library = library;
    this.taken = taken;
    dialog =
        new JDialog(
            SwingUtilities.getWindowAncestor(over),
            Words.of("new-material.title"),
            JDialog.ModalityType.APPLICATION_MODAL);
    dialog.setName("new-material");
    id.setName("new-material-id");
    name.setName("new-material-name");
    message.setName("new-material-message");
    id.setText(free(like.id()));
    name.setText(Words.of("new-material.copy", MaterialNames.of(like)));
    StackPanel body = new StackPanel();
    body.setBorder(BorderFactory.createEmptyBorder(12, 12, 4, 12));
    body.add(StackPanel.words(Words.of("new-material.like", MaterialNames.of(like)), Font.PLAIN));
    body.add(Marked.label("new-material.name", name));
    body.add(name);
    body.add(Marked.label("new-material.id", id));
    body.add(id);
    body.add(message);
    dialog.add(body, BorderLayout.CENTER);
    dialog.add(buttons(), BorderLayout.SOUTH);
    dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
    dialog.setSize(UIScale.scale(SIZE));
    dialog.setLocationRelativeTo(over);
  }

  private String free(String base) {
    int number = 2;
    while (library.find(base + "-" + number).isPresent()) {
      number++;
    }
    return base + "-" + number;
  }

  private JComponent buttons() {
    Command done = Command.of("new-material.done", null, this::done);
    Command leave = Command.of("written.leave", null, dialog::dispose);
    JButton finish = done.named(new JButton(done), "button:");
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    buttons.add(finish);
    buttons.add(leave.named(new JButton(leave), "new-material:"));
    Keys.answer(dialog, finish, leave);
    return buttons;
  }

  void open() {
    dialog.setVisible(true);
  }

  private void done() {
    Optional<String> wrong = wrong();
    message.setText(wrong.orElse(""));
    if (wrong.isEmpty()) {
      dialog.dispose();
      taken.accept(like.named(id.getText().strip(), name.getText().strip()));
    }
    dialog.validate();
  }

  private Optional<String> wrong() {
    String wanted = id.getText().strip();
    if (name.getText().isBlank()) {
      return Optional.of(Words.of("new-material.no-name"));
    }
    if (!wanted.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      return Optional.of(Words.of("new-material.no-id", wanted));
    }
    return library
        .find(wanted)
        .map(other -> Words.of("new-material.taken", wanted, MaterialNames.of(other)));
  }
}
