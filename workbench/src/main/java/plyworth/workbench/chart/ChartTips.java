package plyworth.workbench.chart;

import java.util.Locale;

/** The texts that show when the pointer rests on a chart. */
final class ChartTips {

  private ChartTips() {}

  /** A structure, one layer a line, outside first. */
  static String of(RankingBars.Bar bar) {
    StringBuilder html = new StringBuilder("<html><b>").append(Html.escaped(bar.name()));
    html.append("</b>, outside first");
    bar.plies().forEach(ply -> html.append("<br>").append(Html.escaped(ply.full())));
    return html.append("</html>").toString();
  }

  /** One part of a bar: how much of the value comes from its criterion. */
  static String of(RankingBars.Bar bar, Object criterion, double contribution) {
    String said =
        String.format(
            Locale.ROOT, "<b>%s</b>: %.3f of %.3f<br>", criterion, contribution, bar.value());
    return of(bar).replace("<html>", "<html>" + said);
  }
}
