package plyworth.workbench.command.ranking;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Option;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.chart.ChartFile;
import plyworth.workbench.chart.ChartTheme;
import plyworth.workbench.chart.RankedBars;
import plyworth.workbench.chart.RankingBars;
import plyworth.workbench.chart.RankingChart;
import plyworth.workbench.command.part.WrongInput;

/** The file that a ranking chart is written to, if any. */
final class ChartOption {

  private static final int WIDTH = 1200;
  private static final int MOST_BARS = 100;

  @Option(
      names = "--chart",
      paramLabel = "FILE",
      description = "Also writes the ranking chart, as .png or .svg, of at most 100 candidates.")
  private Path file;

  /** Refuses what cannot be written, before any work is done. */
  void check() {
    if (file == null) {
      return;
    }
    if (Files.isDirectory(file)) {
      throw new WrongInput("--chart: " + file + " is a folder. Name a file in it.");
    }
    if (!ChartFile.canWrite(file)) {
      throw new WrongInput("--chart: " + file + ": the name must end in .png or .svg");
    }
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      throw new WrongInput("--chart: there is no folder " + folder + ". Make it first.");
    }
  }

  /** Whether a chart is asked for. */
  boolean asked() {
    return file != null;
  }

  /** Writes the chart. */
  void write(Ranked ranked, BestList listed) {
    TodayReview today = TodayReview.of(ranked.scored().compiled().prepared());
    RankingBars bars = RankedBars.of(ranked, listed, today, MOST_BARS, Locale.ENGLISH);
    int height = RankingChart.height(bars, ChartTheme.PAPER, WIDTH);
    try {
      ChartFile.write(RankingChart.of(bars, ChartTheme.PAPER), WIDTH, height, file);
    } catch (AccessDeniedException e) {
      throw new WrongInput("--chart: " + file + " cannot be written: permission is denied");
    } catch (FileSystemException e) {
      String reason = e.getReason() == null ? "no file can be made there" : e.getReason();
      throw new WrongInput("--chart: " + file + " cannot be written: " + reason);
    } catch (IOException e) {
      throw new WrongInput("--chart: " + file + " cannot be written: " + e.getMessage());
    }
  }
}
