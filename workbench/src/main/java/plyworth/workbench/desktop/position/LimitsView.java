package plyworth.workbench.desktop.position;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.LimitEffect;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.part.Buttons;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Pipeline;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.LimitWords;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.ranking.LimitTally;

/**
 * The limits: set, changed and removed, with how many candidates drop out by each and who of the
 * best. What is being typed is tried at once.
 */
final class LimitsView {

  private static final int WIDEST = 520;

  private final FigureTable limits = new FigureTable("limits-set", Words.of("limits.name"), WIDEST);
  private final LimitForm form = new LimitForm(this::tryOut, this::set);
  private final JTextArea none = StackPanel.words(Words.of("limits.none"), Font.PLAIN);
  private final JTextArea effect = StackPanel.words(" ", Font.PLAIN);
  private final FigureTable dropouts =
      new FigureTable("limits-dropouts", Words.of("limits.dropouts"), WIDEST);
  private final JButton remove = Buttons.of("limit.remove", this::remove);
  private final JButton set = Buttons.of("limit.set", this::set);
  private final StackPanel sections = new StackPanel();
  private final JScrollPane panel = new JScrollPane(sections);
  private final Background tallying = new Background();
  private final Background trying = new Background();
  private Session session;
  private Ranked shown;
  private List<Limit> shownLimits;
  private LimitEffect found;
  private Optional<Limit> picked = Optional.empty();

  LimitsView() {
    panel.setBorder(BorderFactory.createEmptyBorder());
    panel.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    effect.setName("limit-effect");
    effect.setBorder(BorderFactory.createEmptyBorder(6, 10, 2, 10));
    none.setBorder(BorderFactory.createEmptyBorder(6, 10, 2, 10));
    StackPanel fields = new StackPanel();
    fields.setBorder(BorderFactory.createEmptyBorder(6, 10, 2, 10));
    fields.add(form.component());
    fields.add(Buttons.row(set, remove));
    sections.add(none);
    sections.add(limits.component());
    sections.add(fields);
    sections.add(effect);
    sections.add(dropouts.component());
    limits.whenChosen(row -> pick(shownLimits.get(row)));
    dropouts.whenChosen(row -> session.select(structure(row)));
    dropouts.component().setVisible(false);
    panel.addHierarchyListener(
        event -> {
          if (session != null && panel.isShowing()) {
            show(session);
          }
        });
  }

  /** Shows a limit to be changed; one that the form cannot show can still be removed. */
  private void pick(Limit limit) {
    form.show(limit);
    picked = Optional.of(limit).filter(l -> !form.isAbout(l));
    remove.setEnabled(true);
  }

  private Structure structure(int row) {
    return shown.structure(found.dropouts().get(row).candidate().path());
  }

  JComponent component() {
    return panel;
  }

  /** Shows the limits of the study, and what they do in its ranking. */
  void show(Session now) {
    session = now;
    boolean ready = now.ranked().isPresent();
    set.setEnabled(ready);
    Study study = now.study().orElse(null);
    if (study == null || !ready) {
      remove.setEnabled(false);
      return;
    }
    Ranked ranked = now.ranked().get();
    if (inSight() && (ranked != shown || !study.limits().equals(shownLimits))) {
      boolean tallied = shown != null && sameTally(ranked, study.limits());
      shown = ranked;
      shownLimits = study.limits();
      form.offer(ranked);
      if (!tallied) {
        show(Optional.empty());
        tally(ranked);
      }
      tryOut();
    }
  }

  /** Nothing is counted for a view that nobody sees. */
  private boolean inSight() {
    return panel.isShowing() || SwingUtilities.getWindowAncestor(panel) == null;
  }

  /** Weights do not matter to what limits do. */
  private boolean sameTally(Ranked ranked, List<Limit> limits) {
    return shown.scored() == ranked.scored()
        && shown.study().limits().equals(ranked.study().limits())
        && limits.equals(shownLimits);
  }

  private void show(Optional<List<LimitTally>> tallies) {
    none.setVisible(shownLimits.isEmpty());
    limits.component().setVisible(!shownLimits.isEmpty());
    limits.show(LimitTables.limits(shown, shownLimits, tallies));
    sections.revalidate();
  }

  private void tally(Ranked ranked) {
    if (!ranked.study().limits().equals(shownLimits) || shownLimits.isEmpty()) {
      return;
    }
    tallying.run(
        stale -> LimitTally.of(ranked.scored().table(), ranked.ranking().model(), ranked.exact()),
        tallies -> show(Optional.of(tallies)),
        effect::setText);
  }

  /** Finds out what the typed limit would do. */
  private void tryOut() {
    Optional<Limit> draft = form.draft();
    picked = Optional.empty();
    remove.setEnabled(standing().isPresent());
    if (shown == null || draft.isEmpty()) {
      trying.cancel();
      say(form.hint(), Optional.empty());
      return;
    }
    Ranked ranked = shown;
    trying.run(
        stale -> LimitEffect.of(ranked, draft.get(), Pipeline.LISTED),
        now -> say(LimitTables.said(ranked, now), Optional.of(now)),
        reason -> say(Reason.of(reason), Optional.empty()));
  }

  private void say(String words, Optional<LimitEffect> now) {
    found = now.orElse(null);
    effect.setText(words);
    effect.setVisible(!words.isEmpty());
    dropouts.component().setVisible(now.filter(e -> !e.dropouts().isEmpty()).isPresent());
    now.ifPresent(e -> dropouts.show(LimitTables.dropouts(shown, e)));
    sections.revalidate();
  }

  /** The limit that is set on the criterion and side that the form speaks of. */
  private Optional<Limit> standing() {
    return shownLimits == null
        ? Optional.empty()
        : shownLimits.stream().filter(form::isAbout).findFirst();
  }

  private void set() {
    form.limit()
        .ifPresent(
            limit ->
                session.change(
                    "edit.limit-set",
                    study -> study.withLimits(LimitEffect.set(study.limits(), limit)),
                    form.title()));
  }

  private void remove() {
    picked
        .or(this::standing)
        .ifPresent(
            limit ->
                session.change(
                    "edit.limit-removed",
                    study -> study.withLimits(LimitEffect.without(study.limits(), limit)),
                    LimitWords.criterion(shown, limit)));
  }
}
