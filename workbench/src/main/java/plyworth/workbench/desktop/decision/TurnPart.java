package plyworth.workbench.desktop.decision;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.session.LongWork;
import plyworth.workbench.desktop.session.WorkBar;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.InputWords;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.turn.Duel;
import plyworth.workbench.robustness.turn.Input;
import plyworth.workbench.robustness.turn.Inputs;
import plyworth.workbench.robustness.turn.Sweep;
import plyworth.workbench.robustness.turn.Turn;
import plyworth.workbench.robustness.turn.Turns;
import plyworth.workbench.robustness.turn.World;

/** What would have to be true for the selected candidate to overtake the leader. */
final class TurnPart {

  private static final int MOST = 15;
  private static final int WIDEST = 460;

  /**
   * What was found.
   *
   * @param ahead the one that leads at present
   * @param behind the one that is to overtake it
   * @param sweep what each input does
   */
  private record Found(Ranked ranked, Structure ahead, Structure behind, Sweep sweep) {}

  private final StackPanel panel = new StackPanel();
  private final JTextArea head = StackPanel.words("", Font.PLAIN);
  private final JTextArea note = StackPanel.words("", Font.PLAIN);
  private final LongWork<Found> work;
  private final WorkBar bar;
  private final FigureTable table = new FigureTable("turn", Words.of("turn.name"), WIDEST);
  private Ranked ranked;
  private Structure selected;
  private String own = "";
  private Found shown;

  /**
   * The part.
   *
   * @param changed told whenever more is known
   */
  TurnPart(Runnable changed) {
    work = new LongWork<>(changed);
    bar = new WorkBar("turn", "turn.find", this::find, work::stop);
    head.setName("turn-head");
    note.setName("turn-note");
    for (JTextArea words : List.of(head, note)) {
      words.setBorder(BorderFactory.createEmptyBorder(2, 10, 2, 10));
      panel.add(words);
    }
    panel.remove(note);
    panel.add(bar.component());
    panel.add(table.component());
    panel.add(note);
    table.component().setVisible(false);
  }

  JComponent component() {
    return panel;
  }

  /** The one to overtake: the leader, or for the leader the second. */
  private Optional<Structure> other() {
    return ranked.best().stream()
        .map(c -> ranked.structure(c.path()))
        .filter(s -> !s.equals(selected))
        .findFirst();
  }

  private void find() {
    Ranked now = ranked;
    Structure mine = selected;
    Structure other = other().orElseThrow();
    work.start(progress -> found(now, mine, other, progress));
  }

  private static Found found(Ranked ranked, Structure own, Structure other, Progress progress) {
    Duel named = new Duel(ranked.scored().compiled().prepared().catalog(), other, own);
    World world = World.of(ranked.study(), ranked.ranking().model());
    double lead = named.in(world).lead();
    if (Double.isNaN(lead)) {
      throw new IllegalArgumentException(Words.of("turn.neither"));
    }
    Duel duel = lead < 0 ? named.turned() : named;
    Sweep sweep = Sweep.of(duel, world, Inputs.of(duel, world), progress);
    return new Found(ranked, duel.one(), duel.other(), sweep);
  }

  /** Shows what is known; what belongs to another ranking or candidate is forgotten. */
  void show(Detail detail) {
    Ranked now = detail.ranked();
    Structure structure = detail.structure();
    own = CandidateName.of(detail);
    if (now != ranked || !structure.equals(selected)) {
      ranked = now;
      selected = structure;
      work.clear();
    }
    boolean possible = other().isPresent() && now.ranking().model().weighted();
    bar.show(work, possible);
    Found found = work.result().orElse(null);
    if (found == null) {
      head.setText(
          possible
              ? Words.of("turn.question", name(structure), name(other().orElseThrow()))
              : Words.of("turn.nobody"));
    }
    if (found != shown) {
      shown = found;
      table.component().setVisible(found != null && !found.sweep().turning().isEmpty());
      note.setText("");
      if (found != null) {
        fill(found);
      }
      panel.revalidate();
    }
  }

  private String name(Structure structure) {
    return structure.equals(selected) ? own : CandidateName.of(ranked, structure);
  }

  private void fill(Found found) {
    Sweep sweep = found.sweep();
    int tried = sweep.turning().size() + sweep.others().size();
    String ahead = name(found.ahead());
    String behind = name(found.behind());
    head.setText(
        sweep.turning().isEmpty()
            ? Words.of("turn.none", tried, behind, ahead)
            : Words.of("turn.some", sweep.turning().size(), tried, behind, ahead));
    List<List<String>> rows = new ArrayList<>();
    sweep.turning().stream().limit(MOST).forEach(turns -> rows.add(row(found.ranked(), turns)));
    table.show(new ChartTable(columns(), rows));
    String more =
        sweep.turning().size() > MOST
            ? Words.of("turn.more", sweep.turning().size() - MOST) + " "
            : "";
    String stopped = sweep.complete() ? "" : Words.of("turn.stopped") + " ";
    note.setText(stopped + more + Words.of("turn.how"));
  }

  private static List<ChartTable.Column> columns() {
    return List.of(
        ChartTable.Column.words(Words.of("turn.input")),
        ChartTable.Column.figures(Words.of("turn.now")),
        ChartTable.Column.figures(Words.of("turn.at")),
        ChartTable.Column.figures(Words.of("turn.times")),
        ChartTable.Column.words(Words.of("turn.credible")));
  }

  private static List<String> row(Ranked ranked, Turns turns) {
    Input input = turns.input();
    Turn turn = turns.nearest().orElseThrow();
    double times = turn.figure() / input.present();
    String credible =
        Double.isNaN(input.low())
            ? Words.of("turn.no-range")
            : Words.of(
                input.credible(turn.figure()) ? "turn.within" : "turn.outside",
                figure(input, input.low()),
                figure(input, input.high()));
    return List.of(
        title(ranked, input),
        input.kind() == Input.Kind.TABLE ? Words.of("turn.table") : figure(input, input.present()),
        input.kind() == Input.Kind.TABLE ? "" : figure(input, turn.figure()),
        Double.isFinite(times) ? "× " + Digits.sensible(times) : "–",
        turn.step() ? credible + Words.of("turn.step") : credible);
  }

  private static String title(Ranked ranked, Input input) {
    return switch (input.kind()) {
      case ORDER -> Words.of("turn.order");
      case WEIGHT -> Words.of("turn.weight", weighed(ranked, input));
      case FIGURE, TABLE, SETTING -> InputWords.of(ranked, input.name()).toString();
    };
  }

  private static String weighed(Ranked ranked, Input input) {
    String id = input.name().substring(input.name().indexOf(':') + 1);
    return ranked.ranking().model().criteria().stream()
        .filter(weighed -> weighed.criterion().id().equals(id))
        .map(weighed -> CriterionWords.title(ranked, weighed.criterion()))
        .findFirst()
        .orElse(id);
  }

  private static String figure(Input input, double figure) {
    if (input.kind() == Input.Kind.WEIGHT) {
      return String.format(Locale.ROOT, "%.1f %%", 100 * figure);
    }
    String unit = UnitText.of(input.unit());
    return Digits.sensible(figure) + (unit.isEmpty() ? "" : " " + unit);
  }
}
