package plyworth.workbench.desktop.part;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.function.BiConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import plyworth.shared.structure.Structure;
import plyworth.workbench.desktop.word.Words;

/** Asks for a few words on a structure: the reasons of a decision, or a remark. */
public final class WrittenDialog {

  private static final int LINES = 6;
  private static final Dimension SIZE = new Dimension(560, 380);

  private final JDialog dialog;
  private final JTextArea text = new JTextArea(LINES, 0);
  private final JTextField by = new JTextField();
  private String before = "";

  /**
   * Asks.
   *
   * @param key of the words: its title, what is said of the structure, the label of the text
   * @param taken told what was written, and by whom; not told when nothing came of it
   */
  private WrittenDialog(
      JFrame owner,
      String key,
      Structure structure,
      boolean signed,
      BiConsumer<String, String> taken) {
    dialog = new JDialog(owner, Words.of(key + ".title"), true);
    dialog.setName(key);
    text.setName(key + "-text");
    by.setName(key + "-by");
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    Keys.leaveByTab(text);
    JPanel head = new JPanel(new BorderLayout(0, 8));
    String said = Words.of(key + ".structure") + "\n" + structure;
    head.add(StackPanel.words(said, Font.PLAIN), BorderLayout.NORTH);
    head.add(Marked.label(key + ".text", text), BorderLayout.SOUTH);
    JPanel body = new JPanel(new BorderLayout(0, 4));
    body.setBorder(BorderFactory.createEmptyBorder(12, 12, 8, 12));
    body.add(head, BorderLayout.NORTH);
    body.add(new JScrollPane(text), BorderLayout.CENTER);
    if (signed) {
      JPanel signature = new JPanel(new BorderLayout(8, 0));
      signature.add(Marked.label(key + ".by", by), BorderLayout.WEST);
      signature.add(by, BorderLayout.CENTER);
      body.add(signature, BorderLayout.SOUTH);
    }
    dialog.add(body, BorderLayout.CENTER);
    dialog.add(buttons(key, taken), BorderLayout.SOUTH);
    dialog.setSize(DialogSize.within(dialog, SIZE));
    dialog.setLocationRelativeTo(owner);
  }

  private JPanel buttons(String key, BiConsumer<String, String> taken) {
    Command done =
        Command.of(
            key + ".done",
            null,
            () -> {
              dialog.dispose();
              taken.accept(text.getText().strip(), by.getText().strip());
            });
    Command leave = new Leaving(dialog, this::typed).command();
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING));
    buttons.add(done.named(new JButton(done), "button:"));
    buttons.add(leave.named(new JButton(leave), "button:"));
    dialog
        .getRootPane()
        .registerKeyboardAction(
            leave,
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    return buttons;
  }

  private boolean typed() {
    return !text.getText().strip().equals(before);
  }

  /** Asks for the reasons of a decision; they may be empty. */
  public static void decide(
      JFrame owner, Structure structure, String before, BiConsumer<String, String> taken) {
    WrittenDialog asked = new WrittenDialog(owner, "decide", structure, false, taken);
    asked.text.setText(before);
    asked.before = before.strip();
    asked.dialog.setVisible(true);
  }

  /** Asks for a remark; an empty one is none. */
  public static void remark(
      JFrame owner, Structure structure, String name, BiConsumer<String, String> taken) {
    WrittenDialog asked =
        new WrittenDialog(
            owner,
            "remark",
            structure,
            true,
            (text, by) -> {
              if (!text.isEmpty()) {
                taken.accept(text, by);
              }
            });
    asked.by.setText(name);
    asked.dialog.setVisible(true);
  }
}
