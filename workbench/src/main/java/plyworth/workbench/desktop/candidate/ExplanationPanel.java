package plyworth.workbench.desktop.candidate;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Text;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.Sentences;

/** The breakdown behind the figures, plugin by plugin: tables, bars, curves and notes. */
public final class ExplanationPanel {

  private final JPanel outside = new JPanel(new BorderLayout());
  private final JComboBox<String> choice = new JComboBox<>();
  private final StackPanel sections = new StackPanel();
  private final JScrollPane scroll = new JScrollPane(sections);
  private Detail shown;
  private boolean filling;

  /** A panel that explains nothing yet. */
  public ExplanationPanel() {
    choice.setName("explained-plugin");
    choice.addActionListener(event -> build());
    JPanel head = new JPanel(new BorderLayout(8, 0));
    head.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
    head.add(Marked.label("explanation.choice", choice), BorderLayout.WEST);
    head.add(choice, BorderLayout.CENTER);
    sections.setName("explanation");
    sections.setBorder(BorderFactory.createEmptyBorder(4, 10, 8, 10));
    outside.add(head, BorderLayout.NORTH);
    outside.add(scroll, BorderLayout.CENTER);
  }

  /** What is put into the view. */
  public JComponent component() {
    return outside;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return choice;
  }

  /** Explains the figures of a structure. */
  public void show(Detail detail) {
    boolean same =
        shown != null
            && shown.explanations() == detail.explanations()
            && shown.ranked().scored() == detail.ranked().scored();
    shown = detail;
    if (!same) {
      fillChoice();
      build();
    }
  }

  private void fillChoice() {
    filling = true;
    List<String> titles =
        plugins(shown.ranked()).stream().map(p -> said(p, p.plugin().card().title())).toList();
    int at = choice.getItemCount() == titles.size() ? choice.getSelectedIndex() : 0;
    choice.removeAllItems();
    titles.forEach(choice::addItem);
    choice.setSelectedIndex(titles.isEmpty() ? -1 : at);
    filling = false;
  }

  private static List<BoundPlugin> plugins(Ranked ranked) {
    return ranked.scored().compiled().prepared().bound().plugins();
  }

  /** Builds the parts again, in the colours of the look and feel. */
  void build() {
    if (filling || shown == null || choice.getSelectedIndex() < 0) {
      return;
    }
    sections.removeAll();
    BoundPlugin plugin = plugins(shown.ranked()).get(choice.getSelectedIndex());
    shown.explanations().get(plugin.id()).sections().forEach(s -> section(plugin, s));
    for (Text caution : plugin.plugin().card().cautions()) {
      String words = Words.of("explanation.caution", said(plugin, caution));
      sections.add(StackPanel.words(words, Font.PLAIN));
      sections.add(Box.createVerticalStrut(8));
    }
    sections.revalidate();
    sections.repaint();
    scroll.getVerticalScrollBar().setValue(0);
  }

  private void section(BoundPlugin plugin, Explanation.Section section) {
    boolean note = section instanceof Explanation.Note;
    sections.add(StackPanel.words(said(plugin, section.title()), note ? Font.PLAIN : Font.BOLD));
    sections.add(Box.createVerticalStrut(4));
    if (section instanceof Explanation.Table table) {
      sections.add(ExplanationTable.of(plugin, table));
    } else if (section instanceof Explanation.Bars bars) {
      sections.add(ExplanationFigure.of(said(plugin, bars), said(plugin, bars.title())));
    } else if (section instanceof Explanation.Curves curves) {
      sections.add(ExplanationFigure.of(curves, text -> said(plugin, text)));
    }
    sections.add(Box.createVerticalStrut(4));
    String basis =
        Words.of(note ? "explanation.source" : "explanation.basis", said(plugin, section.basis()));
    sections.add(StackPanel.words(basis, Font.PLAIN));
    sections.add(Box.createVerticalStrut(18));
  }

  private static String said(BoundPlugin plugin, Text text) {
    return Sentences.of(plugin.plugin(), text, Language.inForce().locale());
  }

  /** The same bars with their labels in the language in force. */
  private static Explanation.Bars said(BoundPlugin plugin, Explanation.Bars bars) {
    List<String> labels =
        bars.labels().stream()
            .map(l -> Sentences.word(plugin.plugin(), l, Language.inForce().locale()))
            .toList();
    return new Explanation.Bars(bars.title(), bars.unit(), labels, bars.lengths(), bars.basis());
  }
}
