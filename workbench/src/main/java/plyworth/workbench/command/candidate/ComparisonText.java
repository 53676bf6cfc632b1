package plyworth.workbench.command.candidate;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Finding;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.command.print.FindingText;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.UnitText;
import plyworth.workbench.ranking.Weighed;

/** Structures side by side for people. */
final class ComparisonText {

  private static final int LABEL = 62;
  private static final int COLUMN = 11;

  /** Differences of value that three decimals show. */
  private static final double SHOWN = 0.0005;

  private final Ranked ranked;
  private final List<Compared> sheets;
  private final PrintWriter out;
  private final List<Weighed> criteria;

  private ComparisonText(Ranked ranked, List<Compared> sheets, PrintWriter out) {
    this.ranked = ranked;
    this.sheets = sheets;
    this.out = out;
    criteria = ranked.ranking().model().criteria();
  }

  static String of(Ranked ranked, List<Compared> sheets) {
    StringWriter text = new StringWriter();
    PrintWriter out = new PrintWriter(text);
    new ComparisonText(ranked, sheets, out).print();
    out.flush();
    return text.toString();
  }

  private void print() {
    out.println(ranked.study().title() + ", weighting \"" + ranked.study().weighting() + "\"");
    out.println();
    for (Compared compared : sheets) {
      String notation = compared.name() + ": " + compared.sheet().structure();
      out.println(Paragraph.structure("", notation));
    }
    out.println();
    row("", Compared::name);
    row("value", c -> String.format(Locale.ROOT, "%.3f", c.sheet().valuation().value()));
    row("standing", c -> standing(c.sheet()));
    figures(true);
    figures(false);
    out.println();
    sheets.subList(1, sheets.size()).forEach(this::gains);
    out.println();
    remarks();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private void row(String label, Function<Compared, String> cell) {
    StringBuilder line = new StringBuilder(label);
    line.append(" ".repeat(Math.max(0, LABEL - label.length())));
    for (Compared compared : sheets) {
      String text = cell.apply(compared);
      line.append(" ".repeat(Math.max(1, COLUMN - text.length()))).append(text);
    }
    out.println(line);
  }

  private static String standing(Sheet sheet) {
    return switch (sheet.group()) {
      case OPEN, CANNOT_BE_JUDGED -> "unknown";
      case RANKED, EXCLUDED, BLOCKED -> Choice.plain(sheet.group());
    };
  }

  /** The figures of the criteria with weight, or of the others. */
  private void figures(boolean counting) {
    for (int c : IntStream.range(0, criteria.size()).toArray()) {
      Weighed weighed = criteria.get(c);
      if (weighed.counts() == counting && weighed.criterion().applies()) {
        row(
            label(weighed),
            s -> CriterionText.figure(ranked, weighed, s.sheet().valuation().parts().get(c).low()));
      }
    }
  }

  private static String label(Weighed weighed) {
    String unit = UnitText.of(weighed.criterion().criterion().unit());
    String share =
        weighed.counts() ? String.format(Locale.ROOT, "%5.1f %%  ", 100 * weighed.weight()) : "";
    String indent = share.isEmpty() ? " ".repeat(9) : share;
    return indent + weighed.criterion().id() + (unit.isEmpty() ? "" : ", " + unit);
  }

  private void gains(Compared compared) {
    Sheet today = sheets.get(0).sheet();
    double sum = compared.sheet().valuation().value() - today.valuation().value();
    List<String> parts = new ArrayList<>();
    for (Compared.Gain gain : compared.against(today, criteria)) {
      if (Math.abs(gain.value()) >= SHOWN) {
        parts.add(signed(gain.value()) + " by " + gain.criterion().criterion().id());
      }
    }
    String detail = parts.isEmpty() ? "" : ": " + String.join(", ", parts);
    out.println(Paragraph.of("", compared.name() + " against today " + signed(sum) + detail));
  }

  private static String signed(double value) {
    return String.format(Locale.ROOT, "%+.3f", value).replace('-', '−');
  }

  /** Why structures are not on offer, what blocks them and what warns; what is shared, once. */
  private void remarks() {
    Map<String, List<String>> namesByLine = new LinkedHashMap<>();
    for (Compared compared : sheets) {
      for (String line : lines(compared.sheet())) {
        namesByLine.computeIfAbsent(line, l -> new ArrayList<>()).add(compared.name());
      }
    }
    Map<List<String>, List<String>> linesByNames = new LinkedHashMap<>();
    namesByLine.forEach(
        (line, names) -> linesByNames.computeIfAbsent(names, n -> new ArrayList<>()).add(line));
    linesByNames.forEach(
        (names, lines) -> {
          out.println(String.join(", ", names));
          lines.forEach(line -> out.println(Paragraph.of("  ", line)));
          out.println();
        });
  }

  private List<String> lines(Sheet sheet) {
    Set<String> lines = new LinkedHashSet<>();
    sheet.objections().forEach(o -> lines.add("not on offer: " + o.reason()));
    sheet.remarks().stream()
        .filter(r -> r.finding().level() != Finding.Level.INFORMS)
        .forEach(r -> lines.add(FindingText.of(ranked, r)));
    return List.copyOf(lines);
  }
}
