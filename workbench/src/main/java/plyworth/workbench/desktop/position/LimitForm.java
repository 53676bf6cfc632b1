package plyworth.workbench.desktop.position;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.study.Limit;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Field;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.ranking.Weighed;

/** A limit as it is typed: criterion, side, figure with its unit or class, reason. */
final class LimitForm {

  private final JComboBox<String> criterion = new JComboBox<>();
  private final JComboBox<String> bound = new JComboBox<>();
  private final JTextField figure = new JTextField();
  private final JComboBox<String> grade = new JComboBox<>();
  private final JTextField reason = new JTextField();
  private final Field boundField = new Field("limit.bound", bound);
  private final Field reasonField = new Field("limit.reason", reason);
  private final Field criterionField = new Field("limit.criterion", criterion);
  private final Field figureField = new Field("limit.figure", figure);
  private final Field gradeField = new Field("limit.class", grade);
  private final StackPanel panel = new StackPanel();
  private final Runnable changed;
  private List<BoundCriterion> criteria = List.of();
  private Ranked ranked;
  private boolean filling;

  /**
   * A form.
   *
   * @param changed told when something else is typed or chosen
   * @param taken told that the limit is wanted, by Enter
   */
  LimitForm(Runnable changed, Runnable taken) {
    this.changed = changed;
    bound.addItem(Words.of("limit.at-most"));
    bound.addItem(Words.of("limit.at-least"));
    criterion.addActionListener(event -> criterionChosen());
    bound.addActionListener(event -> told());
    grade.addActionListener(event -> told());
    Typed.into(figure, this::told);
    Typed.into(reason, this::told);
    figure.addActionListener(event -> taken.run());
    reason.addActionListener(event -> taken.run());
    Field.align(criterionField, boundField, figureField, gradeField, reasonField);
    panel.add(criterionField.component());
    panel.add(boundField.component());
    panel.add(figureField.component());
    panel.add(gradeField.component());
    panel.add(reasonField.component());
  }

  JComponent component() {
    return panel;
  }

  private void told() {
    if (!filling) {
      figureField.accept();
      changed.run();
    }
  }

  /** Offers the criteria that apply; what is typed stays. */
  void offer(Ranked now) {
    ranked = now;
    List<BoundCriterion> applying =
        now.ranking().model().criteria().stream()
            .map(Weighed::criterion)
            .filter(BoundCriterion::applies)
            .toList();
    if (!ids(applying).equals(ids(criteria))) {
      filling = true;
      criteria = applying;
      criterion.removeAllItems();
      applying.forEach(c -> criterion.addItem(CriterionWords.title(now, c)));
      filling = false;
      criterionChosen();
    }
    criteria = applying;
  }

  private static List<String> ids(List<BoundCriterion> criteria) {
    return criteria.stream().map(BoundCriterion::id).toList();
  }

  /** The criterion that is chosen. */
  Optional<BoundCriterion> criterion() {
    int index = criterion.getSelectedIndex();
    return index >= 0 && index < criteria.size()
        ? Optional.of(criteria.get(index))
        : Optional.empty();
  }

  private void criterionChosen() {
    if (filling) {
      return;
    }
    criterion().ifPresent(this::shape);
    told();
  }

  /** A figure where the criterion has a unit, a class where it has classes. */
  private void shape(BoundCriterion chosen) {
    boolean classes = !chosen.criterion().classes().isEmpty();
    filling = true;
    grade.removeAllItems();
    for (int c = 0; c < chosen.criterion().classes().size(); c++) {
      grade.addItem(CriterionWords.figure(ranked, chosen, c));
    }
    boolean lower = chosen.criterion().direction() == Criterion.Direction.LOWER;
    bound.setSelectedIndex(lower ? 0 : 1);
    criterion.setToolTipText(CriterionWords.help(ranked, chosen, ""));
    figure.setText("");
    figureField.unit(CriterionWords.unit(chosen));
    figureField.component().setVisible(!classes);
    gradeField.component().setVisible(classes);
    filling = false;
    panel.revalidate();
  }

  /** Shows a limit that is set, to be changed. */
  void show(Limit limit) {
    int index = ids(criteria).indexOf(limit.criterion());
    if (index < 0) {
      return;
    }
    criterion.setSelectedIndex(index);
    filling = true;
    bound.setSelectedIndex(limit.bound().ordinal());
    boolean classes = !criteria.get(index).criterion().classes().isEmpty();
    if (classes) {
      grade.setSelectedIndex((int) limit.figure());
    } else {
      figure.setText(figure(limit, criteria.get(index)));
    }
    reason.setText(limit.reason());
    filling = false;
    told();
  }

  private static String figure(Limit limit, BoundCriterion criterion) {
    String number = BigDecimal.valueOf(limit.figure()).stripTrailingZeros().toPlainString();
    return (number + " " + criterion.criterion().unit()).strip();
  }

  /** What is typed so far; empty while it is no limit. */
  Optional<Limit> draft() {
    try {
      return criterion().map(this::read);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What is typed; empty where something is wrong, which is said. */
  Optional<Limit> limit() {
    try {
      return criterion().map(this::read);
    } catch (IllegalArgumentException e) {
      figureField.refuse(e.getMessage());
      return Optional.empty();
    }
  }

  private Limit read(BoundCriterion chosen) {
    boolean classes = !chosen.criterion().classes().isEmpty();
    double typed =
        classes
            ? grade.getSelectedIndex()
            : LimitFigure.read(figure.getText(), chosen.criterion().unit());
    return new Limit(
        chosen.id(),
        Limit.Bound.values()[bound.getSelectedIndex()],
        typed,
        reason.getText().strip());
  }

  /** Whether a limit is on the criterion and the side that are chosen. */
  boolean isAbout(Limit limit) {
    return limit.bound().ordinal() == bound.getSelectedIndex()
        && criterion().filter(c -> c.id().equals(limit.criterion())).isPresent();
  }

  /** What the chosen criterion is called. */
  String title() {
    return criterion().map(c -> CriterionWords.title(ranked, c)).orElse("");
  }

  /** What to type, where nothing is typed yet; empty where something is. */
  String hint() {
    return criterion()
        .filter(c -> c.criterion().classes().isEmpty() && figure.getText().isBlank())
        .map(c -> Words.of("limit.empty", CriterionWords.unit(c)))
        .orElse("");
  }
}
