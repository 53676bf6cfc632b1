package plyworth.workbench.desktop.plugin;

import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Map;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.study.PluginSettings;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.ButtonCommands;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Entry;
import plyworth.workbench.desktop.part.NumberEntry;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/**
 * A number that a plugin lets its user set. Enter or leaving the field takes what stands in it, as
 * one edit; what is refused stays, with what would be right below it.
 */
final class ParameterRow {

  private static final int COLUMNS = 10;
  private static final int GAP = 6;

  private final Parameter parameter;
  private final String plugin;
  private final String title;
  private final Session session;
  private final StackPanel panel = new StackPanel();
  private final JTextField field = new JTextField(COLUMNS);
  private final Entry entry;
  private final Command reset = Command.of("parameter.reset", null, this::reset);
  private double shown = Double.NaN;

  ParameterRow(ScoringPlugin owner, Parameter parameter, Session session) {
    this.parameter = parameter;
    this.session = session;
    plugin = owner.card().id();
    title = said(owner, parameter.title());
    field.setName("parameter:" + plugin + "/" + parameter.id());
    field.addActionListener(event -> take());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            take();
          }
        });
    entry = new Entry(field);
    field.getAccessibleContext().setAccessibleName(title);
    panel.setBorder(BorderFactory.createEmptyBorder(8, 12, 2, 12));
    panel.add(StackPanel.words(title, Font.PLAIN));
    ButtonCommands.place(panel, title);
    panel.add(line());
    panel.add(entry.refusal());
    JTextArea help = StackPanel.words(bounds() + "\n" + said(owner, parameter.help()), Font.PLAIN);
    help.putClientProperty("FlatLaf.styleClass", "medium");
    panel.add(help);
  }

  private static String said(ScoringPlugin owner, Text text) {
    return Sentences.of(owner, text, Language.inForce().locale());
  }

  private JPanel line() {
    JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 2));
    JButton back = reset.named(new JButton(reset), "reset:" + plugin + "/" + parameter.id() + ":");
    back.getAccessibleContext().setAccessibleName(Words.of("parameter.reset.name", title));
    line.add(field);
    line.add(Box.createHorizontalStrut(GAP));
    line.add(new JLabel(unit()));
    line.add(Box.createHorizontalStrut(GAP));
    line.add(back);
    return line;
  }

  private String bounds() {
    return Words.of(
        "parameter.bounds",
        Digits.sensible(parameter.standard()),
        Digits.sensible(parameter.lowest()),
        amount(Digits.sensible(parameter.highest())));
  }

  private String amount(String number) {
    return (number + " " + unit()).strip();
  }

  private String unit() {
    return parameter.unit().equals("1") ? "" : UnitText.of(parameter.unit());
  }

  JComponent component() {
    return panel;
  }

  /** Shows the value of the study; what is being typed stays. */
  void show(Study study) {
    Map<String, Double> set = study.settings().getOrDefault(plugin, Map.of());
    double now = set.getOrDefault(parameter.id(), parameter.standard());
    reset.setEnabled(set.containsKey(parameter.id()) || entry.refused());
    if (now != shown) {
      shown = now;
      write();
    }
  }

  private void write() {
    field.setText(NumberEntry.text(shown));
    entry.accept();
    panel.revalidate();
  }

  private void take() {
    if (field.getText().strip().equals(NumberEntry.text(shown))) {
      entry.accept();
      return;
    }
    OptionalDouble typed = NumberEntry.of(field.getText());
    if (typed.isEmpty() || !parameter.allows(typed.getAsDouble())) {
      entry.refuse(
          Words.of(
              "parameter.refused",
              NumberEntry.text(parameter.lowest()),
              amount(NumberEntry.text(parameter.highest()))));
      reset.setEnabled(true);
      panel.revalidate();
    } else {
      set(typed.getAsDouble());
    }
  }

  /** A value that is the standard is none of the study's own. */
  private void set(double value) {
    entry.accept();
    shown = Double.NaN;
    session.change(
        () -> Words.of("edit.setting", title),
        study ->
            value == parameter.standard()
                ? PluginSettings.reset(study, plugin, parameter.id())
                : PluginSettings.set(study, plugin, parameter.id(), value));
  }

  private void reset() {
    set(parameter.standard());
  }
}
