package plyworth.workbench.desktop;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/** Notes every change of a showing component that is not made on the event thread. */
final class EventThreadGuard extends RepaintManager {

  private final List<String> violations = new CopyOnWriteArrayList<>();

  @Override
  public synchronized void addInvalidComponent(JComponent component) {
    check(component);
    super.addInvalidComponent(component);
  }

  @Override
  public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
    check(component);
    super.addDirtyRegion(component, x, y, width, height);
  }

  private void check(JComponent component) {
    if (component.isShowing() && !SwingUtilities.isEventDispatchThread()) {
      violations.add(component.getName() + " on " + Thread.currentThread().getName());
    }
  }

  List<String> violations() {
    return violations;
  }
}
