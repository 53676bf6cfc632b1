package plyworth.workbench.speed;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JSlider;
import javax.swing.SwingUtilities;
import plyworth.workbench.desktop.Desktop;
import plyworth.workbench.host.PluginCatalog;

/**
 * Opens the window on a study, moves a weight as a hand would, and prints how long the event thread
 * was busy with one event, and how much processor time it took: 16 ms are one picture of a display.
 */
public final class EventThread {

  private static final int MOVES = 300;
  private static final int WARM_UP = 100;
  private static final int BETWEEN_MILLIS = 30;
  private static final double PICTURE_MILLIS = 16;

  private EventThread() {}

  /** Measures on the study file named first. */
  public static void main(String... args) throws Exception {
    Stopwatches queue = new Stopwatches();
    SwingUtilities.invokeAndWait(
        () -> Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue));
    Desktop.open(Path.of(args[0]), PluginCatalog.load(Path.of("target", "plyworth", "plugins")));
    await(() -> status().contains("candidates:"));
    System.out.println(status());
    JSlider slider = find(JSlider.class, "weight:").orElseThrow();
    move(slider, WARM_UP);
    queue.clear();
    move(slider, MOVES);
    queue.print();
    System.exit(0);
  }

  private static void move(JSlider slider, int times) throws InterruptedException {
    for (int i = 0; i < times; i++) {
      int value = 10 + Math.abs(i % 120 - 60);
      SwingUtilities.invokeLater(
          () -> {
            slider.setValueIsAdjusting(true);
            slider.setValue(value);
          });
      Thread.sleep(BETWEEN_MILLIS);
    }
    SwingUtilities.invokeLater(() -> slider.setValueIsAdjusting(false));
    Thread.sleep(1000);
  }

  private static void await(BooleanSupplier holds) throws InterruptedException {
    while (!holds.getAsBoolean()) {
      Thread.sleep(100);
    }
    Thread.sleep(3000);
  }

  private static String status() {
    return find(JLabel.class, "status").map(JLabel::getText).orElse("");
  }

  private static <C extends Component> Optional<C> find(Class<C> type, String name) {
    return Stream.of(Window.getWindows())
        .flatMap(EventThread::within)
        .filter(type::isInstance)
        .filter(part -> part.getName() != null && part.getName().startsWith(name))
        .map(type::cast)
        .findFirst();
  }

  private static Stream<Component> within(Component part) {
    Stream<Component> inside =
        part instanceof Container container
            ? Stream.of(container.getComponents()).flatMap(EventThread::within)
            : Stream.of();
    return Stream.concat(Stream.of(part), inside);
  }

  /** Times every event. */
  private static final class Stopwatches extends EventQueue {

    private record Timed(double millis, double processor, String event) {}

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    private final List<Timed> timed = new ArrayList<>();

    @Override
    protected void dispatchEvent(AWTEvent event) {
      long start = System.nanoTime();
      long worked = threads.getCurrentThreadCpuTime();
      super.dispatchEvent(event);
      double processor = (threads.getCurrentThreadCpuTime() - worked) / 1e6;
      double millis = (System.nanoTime() - start) / 1e6;
      synchronized (timed) {
        timed.add(new Timed(millis, processor, event.paramString()));
      }
    }

    void clear() {
      synchronized (timed) {
        timed.clear();
      }
    }

    void print() {
      synchronized (timed) {
        print("passed", Timed::millis);
        print("processor time", Timed::processor);
        for (Timed longest : timed.subList(Math.max(0, timed.size() - 5), timed.size())) {
          System.out.printf(
              Locale.ROOT, "%.2f ms of processor time: %s%n", longest.processor(), longest.event());
        }
      }
    }

    private void print(String what, ToDoubleFunction<Timed> millis) {
      timed.sort(Comparator.comparingDouble(millis));
      System.out.printf(
          Locale.ROOT,
          "%d events, %s: median %.2f ms, 95 %% within %.2f ms, 99 %% within %.2f ms,"
              + " longest %.2f ms; %d took longer than %.0f ms%n",
          timed.size(),
          what,
          at(0.5, millis),
          at(0.95, millis),
          at(0.99, millis),
          at(1, millis),
          timed.stream().filter(t -> millis.applyAsDouble(t) > PICTURE_MILLIS).count(),
          PICTURE_MILLIS);
    }

    private double at(double share, ToDoubleFunction<Timed> millis) {
      return millis.applyAsDouble(timed.get((int) Math.round(share * (timed.size() - 1))));
    }
  }
}
