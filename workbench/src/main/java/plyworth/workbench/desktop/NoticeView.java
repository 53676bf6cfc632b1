package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.References;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.plugin.PluginEntry;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.PluginFault;

/** What must not be overlooked, above everything: what is left out, stopped or failed. */
final class NoticeView implements View {

  private final StackPanel panel = new StackPanel();
  private final JPanel bar = new JPanel(new BorderLayout(12, 0));
  private final JTextArea text = StackPanel.words("", Font.PLAIN);
  private final JButton again;

  NoticeView(Command scoreAgain) {
    again = scoreAgain.button();
    again.setName("score-again");
    text.setName("notice");
    text.setFocusable(true);
    text.getAccessibleContext().setAccessibleName(Words.of("notice.name"));
    bar.add(text, BorderLayout.CENTER);
    bar.add(again, BorderLayout.EAST);
    panel.add(bar);
    panel.setVisible(false);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session session) {
    List<String> notices = notices(session);
    boolean partial = session.ranked().filter(r -> !r.ranking().complete()).isPresent();
    panel.setVisible(!notices.isEmpty());
    again.setVisible(partial || session.failed());
    text.setText(String.join("\n", notices));
    Color edge = UIManager.getColor(session.failure().isEmpty() ? "Actions.Yellow" : "Actions.Red");
    bar.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createMatteBorder(0, 6, 0, 0, edge),
            BorderFactory.createEmptyBorder(6, 10, 6, 12)));
  }

  private static List<String> notices(Session session) {
    List<String> notices = new ArrayList<>();
    if (!session.failure().isEmpty()) {
      notices.add(Reason.of(session.failure()));
    }
    session.ranked().ifPresent(ranked -> addState(notices, ranked));
    leftOut(session).ifPresent(names -> notices.add(Words.of("notice.left-out", names)));
    List<References.Dangling> dangling = session.dangling();
    dangling.stream()
        .flatMap(d -> d.plugin().stream())
        .distinct()
        .map(plugin -> Words.of("notice.missing-plugin", plugin, session.plugins()))
        .forEach(notices::add);
    dangling.stream()
        .filter(d -> d.plugin().isEmpty())
        .map(d -> Words.of("notice.dangling", Reason.of(d.toString())))
        .forEach(notices::add);
    return notices;
  }

  /** The names of the plugins that are there, and that the study leaves out. */
  private static Optional<String> leftOut(Session session) {
    String names =
        PluginEntry.all(session).stream()
            .filter(entry -> entry.state() == PluginEntry.State.LEFT_OUT)
            .map(PluginEntry::title)
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? Optional.empty() : Optional.of(names);
  }

  private static void addState(List<String> notices, Ranked ranked) {
    if (!ranked.ranking().complete()) {
      notices.add(
          Words.of(
              "notice.partial",
              ranked.ranking().counts().total(),
              ranked.scored().table().total()));
    }
    if (ranked.best().isEmpty()) {
      notices.add(Words.of("notice.none-ranked"));
    }
    for (PluginFault fault : ranked.scored().faults()) {
      notices.add(Words.of("notice.fault", fault.name(), Reason.of(fault.reason())));
    }
  }
}
