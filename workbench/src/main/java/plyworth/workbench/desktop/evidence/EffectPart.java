package plyworth.workbench.desktop.evidence;

import java.awt.FlowLayout;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import plyworth.shared.data.Choice;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.ResultsEffect;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.LongWork;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.WorkBar;
import plyworth.workbench.desktop.word.Words;

/** How the ranking moved by what was measured: ranked again without, when asked for. */
final class EffectPart {

  private static final int DEPTH = 10;
  private static final int WIDEST = 460;

  private final StackPanel panel = new StackPanel();
  private final LongWork<ResultsEffect> work;
  private final WorkBar bar;
  private final JComboBox<String> without = new JComboBox<>();
  private final JTextArea note = StackPanel.words("", Font.PLAIN);
  private final FigureTable table = new FigureTable("effect", Words.of("effect.name"), WIDEST);
  private Session session;
  private Ranked ranked;
  private ResultsEffect shown;

  /**
   * The part.
   *
   * @param changed told whenever more is known
   */
  EffectPart(Runnable changed) {
    work = new LongWork<>(changed);
    bar = new WorkBar("effect", "effect.find", this::find, work::stop);
    without.setName("effect-without");
    for (ResultsEffect.Without each : ResultsEffect.Without.values()) {
      without.addItem(Words.of("effect.without." + Choice.plain(each)));
    }
    without.addActionListener(
        event -> {
          work.clear();
          changed.run();
        });
    JPanel choice = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 2));
    choice.add(Marked.label("effect.without", without));
    choice.add(without);
    note.setName("effect-note");
    note.setBorder(BorderFactory.createEmptyBorder(2, 10, 4, 10));
    panel.add(choice);
    panel.add(bar.component());
    panel.add(note);
    panel.add(table.component());
    table.component().setVisible(false);
    table.whenChosen(row -> session.select(shown.moves(DEPTH).get(row).structure()));
  }

  JComponent component() {
    return panel;
  }

  private void find() {
    Ranked now = ranked;
    ResultsEffect.Without what = ResultsEffect.Without.values()[without.getSelectedIndex()];
    work.start(progress -> ResultsEffect.of(now, what, progress));
  }

  void show(Session now) {
    session = now;
    Ranked current = now.ranked().orElse(null);
    Study study = now.study().orElseThrow();
    if (current != ranked || current != null && !measuredAlike(current.study(), study)) {
      ranked = current;
      work.clear();
    }
    boolean measured = !study.results().equals(Results.NONE) || !study.measurements().isEmpty();
    bar.show(work, measured && current != null && !now.scoring());
    ResultsEffect found = work.result().orElse(null);
    if (found == null) {
      note.setText(Words.of(measured ? "effect.ask" : "effect.nothing"));
    }
    if (found != shown) {
      shown = found;
      table.component().setVisible(found != null);
      if (found != null) {
        fill(found);
      }
      panel.revalidate();
    }
  }

  private static boolean measuredAlike(Study a, Study b) {
    return a.results().equals(b.results()) && a.measurements().equals(b.measurements());
  }

  private void fill(ResultsEffect effect) {
    if (effect.after().best().isEmpty() || effect.before().best().isEmpty()) {
      note.setText(
          Words.of(effect.after().best().isEmpty() ? "effect.none-now" : "effect.none-before"));
    } else {
      note.setText(
          Words.of(
              effect.turnsTheLead() ? "effect.turned" : "effect.stays",
              leader(effect.before()),
              value(effect.before()),
              leader(effect.after()),
              value(effect.after())));
    }
    table.show(
        new ChartTable(
            List.of(
                ChartTable.Column.figures(Words.of("effect.column.before")),
                ChartTable.Column.figures(Words.of("effect.column.after")),
                ChartTable.Column.words(Words.of("effect.column.move")),
                ChartTable.Column.words(Words.of("table.structure"))),
            effect.moves(DEPTH).stream().map(EffectPart::row).toList()));
  }

  private static List<String> row(ResultsEffect.Move move) {
    return List.of(
        rank(move.before()), rank(move.after()), moved(move), Labels.brief(move.structure()));
  }

  private static String rank(OptionalLong rank) {
    return rank.isPresent() ? Long.toString(rank.getAsLong()) : "–";
  }

  private static String moved(ResultsEffect.Move move) {
    if (move.before().isEmpty() || move.after().isEmpty()) {
      return Words.of(move.after().isEmpty() ? "effect.out" : "effect.in");
    }
    long up = move.before().getAsLong() - move.after().getAsLong();
    return up == 0
        ? Words.of("effect.same")
        : Words.of(up > 0 ? "effect.up" : "effect.down", Math.abs(up));
  }

  private static String leader(Ranked of) {
    return Labels.brief(of.structure(of.best().get(0).path()));
  }

  private static String value(Ranked of) {
    return String.format(Locale.ROOT, "%.3f", of.best().get(0).value());
  }
}
