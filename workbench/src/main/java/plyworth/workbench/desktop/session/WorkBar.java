package plyworth.workbench.desktop.session;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import plyworth.workbench.desktop.part.ButtonCommands;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Begins and stops a {@link LongWork}, and shows how far it is. */
public final class WorkBar {

  private static final int FULL = 1000;

  private final JPanel panel = new JPanel(new BorderLayout(8, 2));
  private final JPanel tools = new JPanel(new FlowLayout(FlowLayout.LEADING, 6, 2));
  private final JButton start;
  private final JButton stop;
  private final JProgressBar progress = new JProgressBar(0, FULL);
  private final JLabel message = new JLabel(" ");

  /**
   * A bar.
   *
   * @param name begins the names of its parts
   * @param begin key of the button that begins
   * @param work what it does
   * @param halt stops it
   */
  public WorkBar(String name, String begin, Runnable work, Runnable halt) {
    Command starting = Command.of(begin, null, work);
    start = starting.named(new JButton(starting), "button:");
    Command stopping = Command.of("work.stop", null, halt);
    stop = stopping.named(new JButton(stopping), name + ":");
    progress.setName(name + "-progress");
    progress.getAccessibleContext().setAccessibleName(Words.of("work.progress"));
    message.setName(name + "-message");
    tools.add(start);
    tools.add(stop);
    tools.add(progress);
    tools.add(message);
    ButtonCommands.place(panel, Marked.of(begin).bare());
    panel.add(tools, BorderLayout.CENTER);
  }

  /** Puts a choice before the button. */
  public void choice(String key, JComponent field) {
    tools.add(Marked.label(key, field), 0);
    tools.add(field, 1);
  }

  /** What is put into a view. */
  public JComponent component() {
    return panel;
  }

  /** Shows how far a work is. */
  public void show(LongWork<?> work, boolean possible) {
    start.setEnabled(possible && !work.running());
    stop.setVisible(work.running());
    progress.setVisible(work.running());
    progress.setValue((int) (FULL * Math.max(0, work.share())));
    String said = Reason.of(work.message());
    message.setText(said.isEmpty() ? " " : said);
    message.setToolTipText(said.isEmpty() ? null : said);
  }
}
