package plyworth.workbench.chart;

import java.util.Locale;

/** The texts that show when the pointer rests on a chart. */
final class ChartTips {

  private ChartTips() {}

  /** A structure, one layer a line, outside first. */
  static String of(RankingBars.Bar bar, ChartWords words) {
    StringBuilder html = new StringBuilder("<html><b>").append(Html.escaped(bar.name()));
    html.append("</b>, ").append(Html.escaped(words.of("tip.outside-first")));
    bar.plies().forEach(ply -> html.append("<br>").append(Html.escaped(ply.full())));
    return html.append("</html>").toString();
  }

  /**
   * One part of a bar: how much of the value comes from its criterion.
   *
   * @param bar the tip of the bar
   * @param value of the bar
   */
  static String part(
      String bar, double value, Object criterion, double contribution, ChartWords words) {
    String said =
        words.of(
            "tip.part",
            "<b>" + Html.escaped(criterion.toString()) + "</b>",
            figure(contribution),
            figure(value));
    return bar.replace("<html>", "<html>" + said + "<br>");
  }

  private static String figure(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
