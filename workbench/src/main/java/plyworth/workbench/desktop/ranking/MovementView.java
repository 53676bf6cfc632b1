package plyworth.workbench.desktop.ranking;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.RankingMove;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.FigureTable;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Movement;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** A quiet line on how the last edit of the data moved the best, and on demand a table of it. */
public final class MovementView implements View {

  private static final int WIDEST = 620;

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTextArea text = StackPanel.words("", Font.PLAIN);
  private final FigureTable table =
      new FigureTable("movement-table", Words.of("movement.name"), WIDEST);
  private final JToggleButton all;
  private Session session;
  private Movement.Told shown;

  /** A line that says nothing yet. */
  public MovementView() {
    Command toggle = Command.of("movement.all", null, this::turn);
    all = toggle.named(new JToggleButton(toggle), "button:");
    all.putClientProperty("FlatLaf.styleClass", "small");
    text.setName("movement");
    text.setFocusable(true);
    text.getAccessibleContext().setAccessibleName(Words.of("movement.name"));
    JPanel tools = new JPanel(new FlowLayout(FlowLayout.TRAILING, 0, 0));
    tools.add(all);
    JPanel line = new JPanel(new BorderLayout(12, 0));
    line.setBorder(BorderFactory.createEmptyBorder(6, 12, 2, 12));
    line.add(text, BorderLayout.CENTER);
    line.add(tools, BorderLayout.EAST);
    StackPanel stack = new StackPanel();
    stack.add(line);
    stack.add(table.component());
    panel.add(stack, BorderLayout.CENTER);
    table.component().setVisible(false);
    table.whenChosen(row -> session.select(shown.move().moves().get(row).structure()));
    panel.setVisible(false);
  }

  private void turn() {
    table.component().setVisible(all.isSelected());
    panel.revalidate();
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session now) {
    session = now;
    Movement.Told told = now.movement().orElse(null);
    if (told != shown) {
      shown = told;
      panel.setVisible(told != null);
      if (told != null) {
        text.setText(said(told));
        table.show(table(told.move()));
      }
      panel.revalidate();
    }
  }

  private static String said(Movement.Told told) {
    RankingMove move = told.move();
    String order =
        move.sameOrder()
            ? Words.of("movement.same")
            : Words.of("movement.moved", move.risen(), move.fallen(), move.entered(), move.left());
    return Words.of("movement.after", told.label().get()) + " " + leader(move) + " " + order;
  }

  private static String leader(RankingMove move) {
    if (move.moves().isEmpty() || move.moves().get(0).left()) {
      return Words.of("movement.none");
    }
    RankingMove.Move first = move.moves().get(0);
    String name = Labels.brief(first.structure());
    if (!move.newLeader()) {
      return Words.of("movement.stays", value(first.valueBefore()), value(first.valueNow()));
    }
    return first.before().isPresent()
        ? Words.of("movement.leads", name, first.before().getAsInt())
        : Words.of("movement.leads-new", name);
  }

  private static String value(double value) {
    return Digits.sensible(value);
  }

  private static ChartTable table(RankingMove move) {
    List<List<String>> rows = new ArrayList<>();
    for (RankingMove.Move each : move.moves()) {
      rows.add(
          List.of(
              place(each.now()),
              place(each.before()),
              direction(each),
              value(each.valueBefore()),
              value(each.valueNow()),
              Labels.brief(each.structure())));
    }
    return new ChartTable(
        List.of(
            ChartTable.Column.figures(Words.of("movement.now")),
            ChartTable.Column.figures(Words.of("movement.before")),
            ChartTable.Column.words(Words.of("movement.direction")),
            ChartTable.Column.figures(Words.of("movement.value-before")),
            ChartTable.Column.figures(Words.of("movement.value-now")),
            ChartTable.Column.words(Words.of("table.structure"))),
        rows);
  }

  private static String place(OptionalInt place) {
    return place.isPresent() ? place.getAsInt() + "" : Digits.sensible(Double.NaN);
  }

  private static String direction(RankingMove.Move move) {
    if (move.entered()) {
      return Words.of("movement.entered");
    }
    if (move.left()) {
      return Words.of("movement.left");
    }
    if (move.rose()) {
      return Words.of("movement.rose", move.before().getAsInt() - move.now().getAsInt());
    }
    return move.fell()
        ? Words.of("movement.fell", move.now().getAsInt() - move.before().getAsInt())
        : Words.of("movement.level");
  }
}
