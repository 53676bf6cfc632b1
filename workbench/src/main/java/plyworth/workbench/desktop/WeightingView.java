package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ItemEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.SwingConstants;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Weighed;

/** The weightings: which is in use, one slider per criterion, and the limits. */
final class WeightingView implements View {

  private static final int STEPS = 100;
  private static final double MOST = 10;

  private record Row(JSlider slider, JLabel share, JLabel title) {}

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JPanel rows = new JPanel();
  private final JComboBox<String> choice = new JComboBox<>();
  private final JLabel limits = new JLabel();
  private final Map<String, Row> byCriterion = new LinkedHashMap<>();
  private Session session;
  private boolean showing;

  WeightingView() {
    rows.setLayout(new BoxLayout(rows, BoxLayout.Y_AXIS));
    rows.setBorder(BorderFactory.createEmptyBorder(4, 12, 12, 12));
    JPanel head = new JPanel(new BorderLayout(6, 6));
    head.setBorder(BorderFactory.createEmptyBorder(12, 12, 4, 12));
    JLabel title = new JLabel(Words.of("weights.choice"));
    title.setLabelFor(choice);
    choice.setName("weighting");
    choice.addItemListener(this::chosen);
    head.add(title, BorderLayout.NORTH);
    head.add(choice, BorderLayout.CENTER);
    JScrollPane scroll = new JScrollPane(rows);
    scroll.setBorder(null);
    scroll.getVerticalScrollBar().setUnitIncrement(16);
    limits.setBorder(BorderFactory.createEmptyBorder(8, 12, 12, 12));
    limits.setName("limits");
    panel.add(head, BorderLayout.NORTH);
    panel.add(scroll, BorderLayout.CENTER);
    panel.add(limits, BorderLayout.SOUTH);
    panel.setMinimumSize(new Dimension(230, 200));
    panel.setPreferredSize(new Dimension(290, 600));
  }

  @Override
  public JComponent component() {
    return panel;
  }

  private void chosen(ItemEvent event) {
    if (!showing && event.getStateChange() == ItemEvent.SELECTED) {
      session.study().weightings().stream()
          .filter(w -> w.name().equals(event.getItem()))
          .findFirst()
          .ifPresent(session::use);
    }
  }

  @Override
  public void show(Session shown) {
    session = shown;
    showing = true;
    Study study = shown.study();
    List<String> names = study.weightings().stream().map(Weighting::name).toList();
    if (!names.equals(items())) {
      choice.removeAllItems();
      names.forEach(choice::addItem);
    }
    choice.setSelectedItem(study.weighting());
    shown.ranked().ifPresent(ranked -> showRows(ranked, study));
    limits.setText(limitsText(study));
    showing = false;
  }

  private List<String> items() {
    return java.util.stream.IntStream.range(0, choice.getItemCount())
        .mapToObj(choice::getItemAt)
        .toList();
  }

  private void showRows(Ranked ranked, Study study) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    List<String> ids =
        criteria.stream()
            .filter(w -> isWeighedSomewhere(study, w.criterion()))
            .map(w -> w.criterion().id())
            .toList();
    if (!ids.equals(List.copyOf(byCriterion.keySet()))) {
      rows.removeAll();
      byCriterion.clear();
      criteria.stream()
          .filter(w -> ids.contains(w.criterion().id()))
          .forEach(w -> addRow(ranked, w.criterion()));
      rows.add(hint(Words.of("weights.hint")));
      rows.add(Box.createVerticalGlue());
      rows.revalidate();
    }
    for (Weighed weighed : criteria) {
      Row row = byCriterion.get(weighed.criterion().id());
      if (row != null && !row.slider().getValueIsAdjusting()) {
        double weight = study.activeWeighting().weight(weighed.criterion().id());
        row.slider().setValue((int) Math.round(weight / MOST * STEPS));
      }
      if (row != null) {
        row.share()
            .setText(
                Words.of(
                    "weights.share", String.format(Locale.ROOT, "%.0f", 100 * weighed.weight())));
      }
    }
  }

  private static boolean isWeighedSomewhere(Study study, BoundCriterion criterion) {
    return study.weightings().stream().anyMatch(w -> w.weight(criterion.id()) > 0);
  }

  private void addRow(Ranked ranked, BoundCriterion criterion) {
    String name = CriterionWords.title(ranked, criterion);
    JSlider slider = new JSlider(0, STEPS);
    slider.setName("weight:" + criterion.id());
    slider.setToolTipText(CriterionWords.help(ranked, criterion));
    JLabel title = new JLabel(name);
    title.setLabelFor(slider);
    JLabel share = new JLabel("", SwingConstants.RIGHT);
    slider.setEnabled(criterion.applies());
    slider.addChangeListener(
        event -> {
          if (!showing) {
            session.weigh(criterion.id(), name, slider.getValue() * MOST / STEPS);
          }
        });
    JPanel top = new JPanel(new BorderLayout());
    top.add(title, BorderLayout.CENTER);
    top.add(share, BorderLayout.EAST);
    JPanel row = new JPanel(new BorderLayout());
    row.setBorder(BorderFactory.createEmptyBorder(6, 0, 2, 0));
    row.add(top, BorderLayout.NORTH);
    row.add(slider, BorderLayout.CENTER);
    criterion
        .notApplicable()
        .ifPresent(
            why ->
                row.add(
                    hint(
                        Words.of(
                            "weights.not-applicable",
                            CriterionWords.sentence(ranked, criterion, why))),
                    BorderLayout.SOUTH));
    row.setMaximumSize(new Dimension(Integer.MAX_VALUE, row.getPreferredSize().height));
    row.setAlignmentX(0);
    rows.add(row);
    byCriterion.put(criterion.id(), new Row(slider, share, title));
  }

  private static JLabel hint(String text) {
    JLabel hint = new JLabel("<html><body style='width:180px'>" + text + "</body></html>");
    hint.putClientProperty("FlatLaf.styleClass", "small");
    hint.setAlignmentX(0);
    hint.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 0));
    return hint;
  }

  private static String limitsText(Study study) {
    StringBuilder text = new StringBuilder("<html><b>").append(Words.of("limits.title"));
    text.append("</b><br>");
    if (study.limits().isEmpty()) {
      text.append(Words.of("limits.none"));
    }
    for (Limit limit : study.limits()) {
      String key = limit.bound() == Limit.Bound.AT_MOST ? "limits.at-most" : "limits.at-least";
      text.append(Words.of(key, limit.criterion(), Digits.sensible(limit.figure()), ""))
          .append("<br>");
    }
    return text.append("</html>").toString();
  }
}
