package plyworth.workbench.speed;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import plyworth.workbench.app.Main;
import plyworth.workbench.desktop.part.FileTaker;

/**
 * Starts the program on a study, opens others in its window one after the other, and prints how
 * long it took until the ranking of each was painted: the first from the start of the process, the
 * others from the moment they are asked for.
 */
public final class FirstPicture {

  private FirstPicture() {}

  /** Measures on study files, in that order. */
  public static void main(String... args) {
    Deque<Path> files = new ArrayDeque<>(Stream.of(args).map(Path::of).toList());
    EventQueue watch = new Watch(files);
    Toolkit.getDefaultToolkit().getSystemEventQueue().push(watch);
    Main.main(new String[] {args[0]});
  }

  private static ProcessHandle.Info process() {
    return ProcessHandle.current().info();
  }

  /** Looks after each event whether the ranking that is waited for is there. */
  private static final class Watch extends EventQueue {

    private final Deque<Path> files;
    private Instant asked = process().startInstant().orElseThrow();
    private Duration before = Duration.ZERO;
    private JLabel status;
    private boolean painting;

    Watch(Deque<Path> files) {
      this.files = files;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
      super.dispatchEvent(event);
      if (!painting && frame().filter(this::ranked).isPresent()) {
        painting = true;
        SwingUtilities.invokeLater(this::painted);
      }
    }

    private boolean ranked(Frame frame) {
      if (status == null) {
        status = status(frame).orElse(null);
      }
      return status != null
          && frame.getTitle().contains(files.getFirst().getFileName().toString())
          && status.getText().contains("candidates:");
    }

    private void painted() {
      RepaintManager.currentManager(status).paintDirtyRegions();
      Toolkit.getDefaultToolkit().sync();
      Duration waited = Duration.between(asked, Instant.now());
      Duration processor = process().totalCpuDuration().orElse(Duration.ZERO);
      System.out.printf(
          Locale.ROOT,
          "%-40s %5.2f s, %5.2f s of processor time%n",
          files.removeFirst().getFileName(),
          waited.toMillis() * 1e-3,
          processor.minus(before).toMillis() * 1e-3);
      if (files.isEmpty()) {
        System.exit(0);
      }
      before = processor;
      asked = Instant.now();
      painting = false;
      ((FileTaker) frame().orElseThrow()).openAfterAsking(files.getFirst());
    }

    private static Optional<Frame> frame() {
      return Stream.of(Frame.getFrames()).filter(FileTaker.class::isInstance).findFirst();
    }

    private static Optional<JLabel> status(Component part) {
      if (part instanceof JLabel label && "status".equals(part.getName())) {
        return Optional.of(label);
      }
      return part instanceof Container container
          ? Stream.of(container.getComponents())
              .map(Watch::status)
              .flatMap(Optional::stream)
              .findFirst()
          : Optional.empty();
    }
  }
}
