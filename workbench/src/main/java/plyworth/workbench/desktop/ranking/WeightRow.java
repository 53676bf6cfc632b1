package plyworth.workbench.desktop.ranking;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.ItemEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.SwingConstants;
import plyworth.shared.study.WeightsBy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;

/**
 * What is stated of one criterion, a weight or points by a slider, or a place in the order, with
 * its share of all weight. One movement of the mouse is one edit; so are the key strokes from
 * taking the keyboard to leaving it.
 */
final class WeightRow {

  private static final int STEPS = 100;

  private final StackPanel panel = new StackPanel();
  private final JSlider slider = new JSlider(0, STEPS);
  private final JComboBox<String> place = new JComboBox<>();
  private final StackPanel control = new StackPanel();
  private final JLabel share = new JLabel("", SwingConstants.RIGHT);
  private final String id;
  private final Supplier<String> title;
  private final Session session;
  private double most = WeightsChoice.LARGEST_NUMBER;
  private double given;
  private boolean showing;
  private boolean dragging;

  WeightRow(Ranked ranked, BoundCriterion criterion, Session session) {
    this.session = session;
    id = criterion.id();
    title = () -> CriterionWords.title(ranked, criterion);
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
    place.setName("place:" + id);
    place.setToolTipText(slider.getToolTipText());
    place.setEnabled(criterion.applies());
    place.addItemListener(this::placed);
    share.setName("share:" + id);
    slider.getAccessibleContext().setAccessibleName(title.get());
    place.getAccessibleContext().setAccessibleName(title.get());
    JPanel stated = new JPanel(new BorderLayout(6, 0));
    stated.add(control, BorderLayout.CENTER);
    stated.add(share, BorderLayout.EAST);
    control.add(slider);
    control.add(place);
    panel.setBorder(BorderFactory.createEmptyBorder(6, 0, 2, 0));
    panel.add(StackPanel.words(title.get(), Font.PLAIN));
    panel.add(stated);
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
   * Shows what is stated of the criterion, unless the slider is being moved.
   *
   * @param by how the weights are stated
   * @param shareOfAll its share of all weight that counts, 0 to 1
   */
  void show(WeightsBy by, double shareOfAll) {
    WeightsChoice choice = WeightsChoice.of(by);
    boolean ordered = choice == WeightsChoice.ORDER;
    slider.setVisible(!ordered);
    place.setVisible(ordered);
    given = by.given(id);
    String percent = String.format(Locale.ROOT, "%.0f", 100 * shareOfAll);
    share.setText(
        choice == WeightsChoice.SWING_POINTS
            ? Words.of("weights.points", Digits.sensible(given), percent)
            : Words.of("weights.share", percent));
    showing = true;
    if (by instanceof WeightsBy.RankOrder order) {
      showPlaces(order.criteria().size() + (given == 0 ? 1 : 0));
    } else if (!slider.getValueIsAdjusting()) {
      most =
          choice == WeightsChoice.SWING_POINTS
              ? WeightsBy.SwingPoints.MOST
              : Math.max(WeightsChoice.LARGEST_NUMBER, given);
      slider.setValue(position());
    }
    showing = false;
  }

  private void showPlaces(int last) {
    if (place.getItemCount() != last + 1) {
      place.removeAllItems();
      place.addItem(Words.of("weights.no-place"));
      IntStream.rangeClosed(1, last).mapToObj(Integer::toString).forEach(place::addItem);
    }
    place.setSelectedIndex((int) given);
  }

  private void placed(ItemEvent event) {
    if (!showing && event.getStateChange() == ItemEvent.SELECTED) {
      session.weigh(id, title, place.getSelectedIndex());
      session.settle();
    }
  }

  private int position() {
    return (int) Math.round(given / most * STEPS);
  }

  private void moved() {
    if (slider.getValueIsAdjusting() && !dragging) {
      session.settle();
    }
    dragging = slider.getValueIsAdjusting();
    if (!showing && slider.getValue() != position()) {
      given = slider.getValue() * most / STEPS;
      session.weigh(id, title, given);
    }
  }
}
