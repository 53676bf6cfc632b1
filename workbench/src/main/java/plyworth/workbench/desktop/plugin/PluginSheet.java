package plyworth.workbench.desktop.plugin;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.study.PluginSettings;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.LoadedPlugin;

/** One plugin: who it is, whether the study uses it, what can be set, and how it measures. */
final class PluginSheet {

  private final StackPanel panel = new StackPanel();
  private final JTextArea facts = StackPanel.words("", Font.PLAIN);
  private final Page cautions = page("plugin-cautions", "plugins.cautions");
  private final Page criteria = page("plugin-criteria", "plugins.criteria");
  private final Page rules = page("plugin-rules", "plugins.rules");
  private final Marked marked = Marked.of("plugins.use");
  private final JCheckBox use = new JCheckBox(marked.text());
  private final JTextArea leftOut = StackPanel.words(Words.of("plugins.left-out.note"), Font.PLAIN);
  private final List<ParameterRow> rows = new ArrayList<>();
  private Session session;
  private PluginEntry shown;

  PluginSheet() {
    panel.setName("plugin-sheet");
    panel.setBorder(BorderFactory.createEmptyBorder(8, 4, 16, 4));
    facts.setName("plugin-facts");
    facts.setFocusable(true);
    facts.getAccessibleContext().setAccessibleName(Words.of("plugins.facts"));
    facts.setBorder(BorderFactory.createEmptyBorder(2, 12, 4, 12));
    use.setName("plugin-use");
    use.setMnemonic(marked.key());
    use.setDisplayedMnemonicIndex(marked.at());
    use.setBorder(BorderFactory.createEmptyBorder(4, 12, 4, 12));
    use.addActionListener(event -> switched());
    leftOut.setName("plugin-left-out");
    leftOut.setBorder(BorderFactory.createEmptyBorder(0, 12, 4, 12));
  }

  /** New text does not scroll the sheet. */
  private static Page page(String name, String key) {
    Page page = new Page(name, Words.of(key));
    page.setBorder(BorderFactory.createEmptyBorder(2, 12, 6, 12));
    ((DefaultCaret) page.getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    return page;
  }

  JComponent component() {
    return panel;
  }

  private void switched() {
    String id = shown.name();
    String title = shown.title();
    boolean used = use.isSelected();
    session.change(
        () -> Words.of(used ? "edit.plugin.use" : "edit.plugin.leave-out", title),
        study -> PluginSettings.use(study, id, used));
  }

  /** Shows a plugin; the fields stay where it is the same. */
  void show(Session now, PluginEntry entry) {
    session = now;
    boolean other = shown == null || !shown.loaded().equals(entry.loaded());
    boolean changed = !entry.equals(shown);
    shown = entry;
    if (other || entry.loaded().isEmpty()) {
      build(entry);
    }
    if (changed) {
      facts.setText(PluginPage.facts(entry));
    }
    boolean out = entry.state() == PluginEntry.State.LEFT_OUT;
    use.setSelected(!out);
    use.setEnabled(entry.canSwitch(now.study()));
    leftOut.setVisible(out);
    now.study().ifPresent(study -> rows.forEach(row -> row.show(study)));
    panel.revalidate();
  }

  private void build(PluginEntry entry) {
    panel.removeAll();
    rows.clear();
    JTextArea title = StackPanel.words(entry.title(), Font.BOLD);
    title.setBorder(BorderFactory.createEmptyBorder(2, 12, 2, 12));
    panel.add(title);
    panel.add(facts);
    entry.loaded().map(LoadedPlugin::plugin).ifPresent(this::fill);
    panel.repaint();
  }

  private void fill(ScoringPlugin plugin) {
    panel.add(use);
    panel.add(leftOut);
    head("plugins.cautions");
    cautions.setText(PluginPage.cautions(plugin));
    panel.add(cautions);
    head("plugins.parameters");
    if (plugin.parameters().isEmpty()) {
      JTextArea none = StackPanel.words(Words.of("plugins.no-parameter"), Font.PLAIN);
      none.setBorder(BorderFactory.createEmptyBorder(2, 12, 2, 12));
      panel.add(none);
    }
    for (Parameter parameter : plugin.parameters()) {
      ParameterRow row = new ParameterRow(plugin, parameter, session);
      rows.add(row);
      panel.add(row.component());
    }
    head("plugins.criteria");
    criteria.setText(PluginPage.criteria(plugin));
    panel.add(criteria);
    head("plugins.rules");
    rules.setText(PluginPage.rules(plugin));
    panel.add(rules);
  }

  private void head(String key) {
    JTextArea head = StackPanel.words(Words.of(key), Font.BOLD);
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 2, 12));
    panel.add(head);
  }
}
