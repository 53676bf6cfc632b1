package plyworth.workbench.desktop.ranking;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.ItemEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.LimitWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.ranking.Weighed;

/** The weightings: which is in use, one slider per criterion, and the limits. */
public final class WeightingView implements View {

  private final JPanel panel = new JPanel(new BorderLayout());
  private final StackPanel rows = new StackPanel();
  private final JComboBox<String> choice = new JComboBox<>();
  private final JComboBox<WeightsChoice> by = new JComboBox<>(WeightsChoice.values());
  private final JCheckBox all = new JCheckBox();
  private final StackPanel limits = new StackPanel();
  private final Map<String, WeightRow> byCriterion = new LinkedHashMap<>();
  private Session session;
  private Ranked shown;
  private boolean showing;

  /** Weights of nothing yet. */
  public WeightingView() {
    StackPanel head = new StackPanel();
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 4, 12));
    choice.setName("weighting");
    choice.addItemListener(this::chosen);
    by.setName("weights-by");
    by.setToolTipText(Words.of("weights.by.help"));
    by.addItemListener(this::stated);
    head.add(Marked.label("weights.choice", choice));
    head.add(choice);
    JLabel byLabel = Marked.label("weights.by", by);
    byLabel.setBorder(BorderFactory.createEmptyBorder(6, 0, 0, 0));
    head.add(byLabel);
    head.add(by);
    head.add(all);
    Marked marked = Marked.of("weights.all");
    all.setText(marked.text());
    all.setMnemonic(marked.key());
    all.setName("all-criteria");
    all.setToolTipText(Words.of("weights.all.help"));
    all.addActionListener(event -> show(session));
    rows.setBorder(BorderFactory.createEmptyBorder(4, 12, 12, 12));
    limits.setBorder(BorderFactory.createEmptyBorder(8, 12, 12, 12));
    limits.setName("limits");
    JScrollPane scroll = new JScrollPane(rows);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    panel.setName("weights");
    panel.add(head, BorderLayout.NORTH);
    panel.add(scroll, BorderLayout.CENTER);
    panel.add(limits, BorderLayout.SOUTH);
    panel.setMinimumSize(UIScale.scale(new Dimension(230, 200)));
    panel.setPreferredSize(UIScale.scale(new Dimension(250, 600)));
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return choice;
  }

  private void chosen(ItemEvent event) {
    if (!showing && event.getStateChange() == ItemEvent.SELECTED) {
      session.study().stream()
          .flatMap(study -> study.weightings().stream())
          .filter(w -> w.name().equals(event.getItem()))
          .findFirst()
          .ifPresent(session::use);
    }
  }

  /** States the weights in another way, as one edit. */
  private void stated(ItemEvent event) {
    if (!showing && event.getStateChange() == ItemEvent.SELECTED) {
      WeightsChoice chosen = (WeightsChoice) event.getItem();
      session
          .study()
          .map(Study::activeWeighting)
          .ifPresent(w -> session.use(new Weighting(w.name(), chosen.from(w.weights()))));
    }
  }

  @Override
  public void show(Session now) {
    session = now;
    showing = true;
    choice.setEnabled(now.study().isPresent());
    by.setEnabled(now.study().isPresent());
    all.setEnabled(now.ranked().isPresent());
    now.study().ifPresent(this::showChoice);
    now.ranked().ifPresent(ranked -> showRows(ranked, now.study().orElseThrow()));
    showing = false;
  }

  private void showChoice(Study study) {
    List<String> names = study.weightings().stream().map(Weighting::name).toList();
    List<String> items =
        IntStream.range(0, choice.getItemCount()).mapToObj(choice::getItemAt).toList();
    if (!names.equals(items)) {
      choice.removeAllItems();
      names.forEach(choice::addItem);
    }
    choice.setSelectedItem(study.weighting());
    by.setSelectedItem(WeightsChoice.of(study.activeWeighting().by()));
  }

  private void showRows(Ranked ranked, Study study) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    List<String> ids =
        criteria.stream()
            .map(Weighed::criterion)
            .filter(c -> all.isSelected() || isWeighedSomewhere(study, c))
            .map(BoundCriterion::id)
            .toList();
    boolean sameBrief = shown != null && shown.study().brief() == study.brief();
    if (!sameBrief || !ids.equals(List.copyOf(byCriterion.keySet()))) {
      build(ranked, ids);
    }
    if (!sameBrief || !study.limits().equals(shown.study().limits())) {
      showLimits(ranked);
    }
    shown = ranked;
    for (Weighed weighed : criteria) {
      WeightRow row = byCriterion.get(weighed.criterion().id());
      if (row != null) {
        row.show(study.activeWeighting().by(), weighed.weight());
      }
    }
  }

  private static boolean isWeighedSomewhere(Study study, BoundCriterion criterion) {
    return study.weightings().stream().anyMatch(w -> w.weight(criterion.id()) > 0);
  }

  private void build(Ranked ranked, List<String> ids) {
    rows.removeAll();
    byCriterion.clear();
    for (Weighed weighed : ranked.ranking().model().criteria()) {
      BoundCriterion criterion = weighed.criterion();
      if (ids.contains(criterion.id())) {
        WeightRow row = new WeightRow(ranked, criterion, session);
        rows.add(row.component());
        byCriterion.put(criterion.id(), row);
      }
    }
    rows.add(StackPanel.words(Words.of("weights.hint"), Font.PLAIN));
    rows.revalidate();
    rows.repaint();
  }

  private void showLimits(Ranked ranked) {
    limits.removeAll();
    limits.add(StackPanel.words(Words.of("limits.title"), Font.BOLD));
    if (ranked.study().limits().isEmpty()) {
      limits.add(StackPanel.words(Words.of("limits.none"), Font.PLAIN));
    }
    ranked.study().limits().stream()
        .map(limit -> LimitWords.of(ranked, limit))
        .forEach(text -> limits.add(StackPanel.words(text, Font.PLAIN)));
    SwingUtilities.invokeLater(panel::revalidate);
  }
}
