package plyworth.workbench.desktop;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;

/** The whole way of a study to its ranking, off the event thread, telling how far it is. */
final class Pipeline {

  /** How many of the best are listed. */
  static final int LISTED = 200;

  /** How far the work is. */
  record Stage(String text, double share) {}

  private static final long NANOS_BETWEEN_REPORTS = 50_000_000;

  private final Consumer<Stage> report;
  private volatile boolean stopped;
  private volatile long lastReport;

  Pipeline(Consumer<Stage> report) {
    this.report = report;
  }

  /** Stops scoring and keeps what is done. */
  void stop() {
    stopped = true;
  }

  Ranked run(Study study, PluginCatalog catalog, BooleanSupplier stale) {
    tell(new Stage(Words.of("status.counting"), -1));
    Compiled compiled = Compiled.of(Prepared.of(study, catalog), stale);
    Scored scored = Scored.of(compiled, progress(stale));
    return Ranked.of(scored, LISTED);
  }

  private Progress progress(BooleanSupplier stale) {
    return new Progress() {
      @Override
      public void scored(long candidates, long of) {
        long now = System.nanoTime();
        if (now - lastReport > NANOS_BETWEEN_REPORTS) {
          lastReport = now;
          tell(new Stage(Words.of("status.scoring", candidates, of), (double) candidates / of));
        }
      }

      @Override
      public boolean cancelled() {
        return stopped || stale.getAsBoolean();
      }
    };
  }

  private void tell(Stage stage) {
    SwingUtilities.invokeLater(() -> report.accept(stage));
  }

  /** Whether two studies have the same scores, and differ in what is ranked alone at most. */
  static boolean sameScores(Study a, Study b) {
    return a.brief().equals(b.brief())
        && a.positions().equals(b.positions())
        && a.rules().equals(b.rules())
        && a.settings().equals(b.settings())
        && a.materials().equals(b.materials())
        && a.processes().equals(b.processes());
  }
}
