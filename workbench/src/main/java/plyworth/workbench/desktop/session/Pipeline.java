package plyworth.workbench.desktop.session;

import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import javax.swing.SwingUtilities;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;

/** The whole way of a study to its ranking, off the event thread, telling how far it is. */
public final class Pipeline {

  /** How many of the best are listed. */
  public static final int LISTED = 200;

  /** How many kinds are listed. */
  public static final int KINDS = 10;

  /**
   * What comes out.
   *
   * @param ranked the ranking
   * @param kinds the best of each kind
   * @param today what was measured on today's pack beside what is predicted of it
   */
  record Result(Ranked ranked, BestList kinds, TodayReview today) {

    static Result of(Ranked ranked, TodayReview today) {
      return new Result(ranked, BestList.kinds(ranked, KINDS), today);
    }
  }

  /** How far the work is. */
  public record Stage(String text, double share) {}

  private static final long NANOS_BETWEEN_REPORTS = 50_000_000;

  private final BiConsumer<Pipeline, Stage> report;
  private volatile boolean stopped;
  private final Study study;
  private volatile long lastReport;

  /**
   * A way not gone yet.
   *
   * @param report told on the event thread how far it is
   */
  Pipeline(Study study, BiConsumer<Pipeline, Stage> report) {
    this.study = study;
    this.report = report;
  }

  /** Stops counting or scoring, and keeps what is scored. */
  void stop() {
    stopped = true;
  }

  /** What is scored. */
  Study study() {
    return study;
  }

  /**
   * Goes the whole way.
   *
   * @param stale whether nobody waits for the result any more
   * @throws java.util.concurrent.CancellationException when stopped before anything was scored
   */
  Result run(PluginCatalog catalog, BooleanSupplier stale) {
    tell(new Stage(Words.of("status.counting"), -1));
    Compiled compiled =
        Compiled.of(Prepared.of(study, catalog), () -> stopped || stale.getAsBoolean());
    Scored scored = Scored.of(compiled, progress(stale));
    tell(new Stage(Words.of("status.ranking"), -1));
    return Result.of(Ranked.of(scored, LISTED), TodayReview.of(scored.compiled().prepared()));
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
    SwingUtilities.invokeLater(() -> report.accept(this, stage));
  }

  /** Whether two studies have the same scores, and differ in what is ranked alone at most. */
  public static boolean sameScores(Study a, Study b) {
    return a.brief().equals(b.brief())
        && a.positions().equals(b.positions())
        && a.rules().equals(b.rules())
        && a.baseline().equals(b.baseline())
        && a.measurements().equals(b.measurements())
        && a.settings().equals(b.settings())
        && a.materials().equals(b.materials())
        && a.processes().equals(b.processes())
        && a.plant().equals(b.plant())
        && a.results().materials().equals(b.results().materials());
  }
}
