package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.session.Pipeline;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.CalibrationWords;
import plyworth.workbench.desktop.word.Words;

/** The foot of the window: what is known, what is being done, and a button to stop it. */
final class FootView implements View {

  private static final int FULL = 1000;

  private final JPanel panel = new JPanel(new BorderLayout(12, 0));
  private final JLabel message = new JLabel(" ");
  private final JLabel calibration = new JLabel("");
  private final JProgressBar progress = new JProgressBar(0, FULL);
  private final JPanel work = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));

  FootView(Command stop) {
    message.setName("status");
    progress.setName("progress");
    progress.getAccessibleContext().setAccessibleName(Words.of("status.progress"));
    work.add(progress);
    work.add(stop.button());
    JLabel caution = new JLabel(Words.of("caution"));
    caution.setName("caution");
    caution.putClientProperty("FlatLaf.styleClass", "small");
    calibration.setName("calibration");
    calibration.putClientProperty("FlatLaf.styleClass", "small");
    JPanel lines = new JPanel(new BorderLayout());
    lines.add(message, BorderLayout.NORTH);
    lines.add(calibration, BorderLayout.CENTER);
    lines.add(caution, BorderLayout.SOUTH);
    panel.setBorder(BorderFactory.createEmptyBorder(6, 12, 6, 12));
    panel.add(lines, BorderLayout.CENTER);
    panel.add(work, BorderLayout.EAST);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session session) {
    String text = session.stage().map(Pipeline.Stage::text).orElse(session.message());
    message.setText(text.isEmpty() ? " " : text);
    message.setToolTipText(text.isEmpty() ? null : text);
    calibration.setText(
        session.ranked().map(ranked -> CalibrationWords.brief(session.today())).orElse(""));
    calibration.setToolTipText(
        session
            .ranked()
            .map(ranked -> CalibrationWords.said(ranked, session.today()))
            .orElse(null));
    work.setVisible(session.scoring());
    double share = session.stage().map(Pipeline.Stage::share).orElse(-1.0);
    progress.setIndeterminate(session.scoring() && share < 0);
    progress.setValue((int) (share * FULL));
  }
}
