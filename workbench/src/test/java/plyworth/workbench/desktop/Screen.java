package plyworth.workbench.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Assertions;
import plyworth.workbench.desktop.part.Appearance;

/** Looks at what is on screen, always on the event thread. */
public final class Screen {

  private static final long LIMIT_NANOS = 60_000_000_000L;
  private static final Path PICTURES = Path.of("target/screens");

  private Screen() {}

  /** The answer of the event thread. */
  public static <T> T on(Supplier<T> question) {
    if (SwingUtilities.isEventDispatchThread()) {
      return question.get();
    }
    AtomicReference<T> answer = new AtomicReference<>();
    try {
      SwingUtilities.invokeAndWait(() -> answer.set(question.get()));
    } catch (InvocationTargetException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return answer.get();
  }

  /** Waits until something holds on the event thread, for a minute at most. */
  static void await(String what, BooleanSupplier condition) {
    long end = System.nanoTime() + LIMIT_NANOS;
    while (!on(condition::getAsBoolean)) {
      if (System.nanoTime() > end) {
        Assertions.fail("waited in vain: " + what);
      }
      java.util.concurrent.locks.LockSupport.parkNanos(10_000_000);
    }
  }

  /** The showing component of that name, in any window. */
  static <C extends Component> Optional<C> find(String name, Class<C> type) {
    return on(
        () ->
            Stream.of(Window.getWindows())
                .filter(Component::isShowing)
                .flatMap(window -> all(window).stream())
                .filter(c -> name.equals(c.getName()) && c.isShowing())
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst());
  }

  /** The showing component of that name, waited for. */
  static <C extends Component> C get(String name, Class<C> type) {
    await(name + " shows", () -> find(name, type).isPresent());
    return find(name, type).orElseThrow();
  }

  /** Presses the button of that name, waited for, without the mouse. */
  static void press(String name) {
    AbstractButton button = get(name, AbstractButton.class);
    on(
        () -> {
          button.doClick(0);
          return null;
        });
  }

  /** Puts an appearance on, for panels that are painted without a window. */
  public static void dress(Appearance appearance) {
    on(
        () -> {
          appearance.apply();
          return null;
        });
  }

  /** A component and everything in it. */
  public static List<Component> all(Component root) {
    List<Component> found = new ArrayList<>(List.of(root));
    if (root instanceof Container container) {
      for (Component part : container.getComponents()) {
        found.addAll(all(part));
      }
    }
    return found;
  }

  /** Keeps a picture for people to look at. */
  public static void keep(String name, BufferedImage picture) {
    try {
      Files.createDirectories(PICTURES);
      ImageIO.write(picture, "png", PICTURES.resolve(name + ".png").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
