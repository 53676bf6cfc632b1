package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.SwingConstants;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;

/**
 * The slider of one weight, with its share of all weight. One movement of the mouse is one edit; so
 * are the key strokes from taking the keyboard to leaving it.
 */
final class WeightRow {

  private static final int STEPS = 100;
  private static final double MOST = 10;

  private final StackPanel panel = new StackPanel();
  private final JSlider slider = new JSlider(0, STEPS);
  private final JLabel share = new JLabel("", SwingConstants.RIGHT);
  private final String id;
  private final String title;
  private final Session session;
  private double most = MOST;
  private double weight;
  private boolean showing;
  private boolean dragging;

  WeightRow(Ranked ranked, BoundCriterion criterion, Session session) {
    this.session = session;
    id = criterion.id();
    title = CriterionWords.title(ranked, criterion);
    slider.setName("weight:" + id);
    slider.setToolTipText(CriterionWords.help(ranked, criterion, ""));
    slider.setEnabled(criterion.applies());
    slider.addChangeListener(event -> moved());
    slider.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent event) {
            session.settle();
          }
        });
    slider.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseReleased(MouseEvent event) {
            session.settle();
          }
        });
    JLabel label = new JLabel(title);
    label.setLabelFor(slider);
    share.setName("share:" + id);
    JPanel top = new JPanel(new BorderLayout());
    top.add(label, BorderLayout.CENTER);
    top.add(share, BorderLayout.EAST);
    panel.setBorder(BorderFactory.createEmptyBorder(6, 0, 2, 0));
    panel.add(top);
    panel.add(slider);
    criterion
        .notApplicable()
        .map(why -> CriterionWords.sentence(ranked, criterion, why))
        .map(why -> Words.of("weights.not-applicable", why))
        .ifPresent(why -> panel.add(StackPanel.words(why, Font.PLAIN)));
  }

  JComponent component() {
    return panel;
  }

  /**
   * Shows a weight, unless the slider is being moved.
   *
   * @param given weight in the study
   * @param shareOfAll its share of all weight that counts, 0 to 1
   */
  void show(double given, double shareOfAll) {
    weight = given;
    if (!slider.getValueIsAdjusting()) {
      most = Math.max(MOST, given);
      showing = true;
      slider.setValue(position());
      showing = false;
    }
    share.setText(Words.of("weights.share", String.format(Locale.ROOT, "%.0f", 100 * shareOfAll)));
  }

  private int position() {
    return (int) Math.round(weight / most * STEPS);
  }

  private void moved() {
    if (slider.getValueIsAdjusting() && !dragging) {
      session.settle();
    }
    dragging = slider.getValueIsAdjusting();
    if (!showing && slider.getValue() != position()) {
      weight = slider.getValue() * most / STEPS;
      session.weigh(id, title, weight);
    }
  }
}
