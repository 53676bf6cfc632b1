package plyworth.workbench.desktop.brief;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.data.Choice;
import plyworth.shared.plant.Plant;
import plyworth.shared.study.Study;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.ClimateWords;
import plyworth.workbench.desktop.word.MeasurementWords;
import plyworth.workbench.desktop.word.PlantWords;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** The brief in words. */
public final class BriefView implements View {

  private final Page text = new Page("brief", Words.of("view.brief"));
  private final JPanel panel = new JPanel(new BorderLayout());
  private Study shown;

  private final Command edit;

  /**
   * The brief of no study yet.
   *
   * @param editing asks for another brief
   */
  public BriefView(Runnable editing) {
    edit = Command.of("brief.edit", null, editing);
    edit.setEnabled(false);
    JPanel tools = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 6));
    tools.add(edit.named(new JButton(edit), "button:"));
    panel.add(tools, BorderLayout.NORTH);
    panel.add(new JScrollPane(text), BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session session) {
    Study now = session.study().orElse(null);
    edit.setEnabled(now != null);
    if (now != null && changed(now)) {
      shown = now;
      text.show(html(now));
    }
  }

  private boolean changed(Study now) {
    return shown == null
        || now.brief() != shown.brief()
        || !now.question().equals(shown.question())
        || !now.baseline().equals(shown.baseline())
        || !now.limits().equals(shown.limits())
        || !now.notes().equals(shown.notes())
        || !now.measurements().equals(shown.measurements())
        || !now.plant().equals(shown.plant());
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return text;
  }

  private static String html(Study study) {
    StringBuilder html = new StringBuilder("<html><table cellpadding='4'>");
    line(html, "brief.question", orNone(study.question()));
    terms(html, study);
    product(html, study.brief().product());
    Brief brief = study.brief();
    line(html, "brief.climate", ClimateWords.of(brief.climate()));
    line(html, "brief.handling", Words.of("brief.handling." + Choice.plain(brief.handling())));
    line(
        html,
        "brief.shelf-life",
        Words.of("brief.shelf-life.value", Digits.sensible(brief.shelfLifeDays())));
    line(html, "brief.measurements", MeasurementWords.of(study.measurements()));
    pack(html, brief.pack());
    machine(html, brief.machine());
    line(
        html,
        "brief.market",
        Words.of(
            "brief.market.value",
            brief.market().region(),
            Integer.toString(brief.market().launchYear()),
            Integer.toString(brief.market().endYear())));
    line(
        html,
        "brief.order",
        Words.of(
            "brief.order.value",
            Digits.sensible(brief.order().packs()),
            Digits.sensible(brief.order().orders()),
            Digits.sensible(brief.order().newColours())));
    study.plant().ifPresent(plant -> plant(html, plant));
    line(html, "brief.notes", orNone(study.notes()));
    return html.append("</table></html>").toString();
  }

  /** Today's structure, and the limits that are a deadline and a target price. */
  private static void terms(StringBuilder html, Study study) {
    line(html, "form.field.baseline", UnitText.of(study.baseline().toString()));
    BriefDraft draft = BriefDraft.of(study);
    String deadline = draft.text(BriefField.DEADLINE);
    String price = draft.text(BriefField.PRICE);
    if (!deadline.isEmpty()) {
      line(html, "form.field.deadline", deadline);
    }
    if (!price.isEmpty()) {
      String of = Words.of("form.price-of." + draft.text(BriefField.PRICE_OF));
      line(html, "form.field.price", Words.of("brief.price", price, of));
    }
  }

  private static void pack(StringBuilder html, Pack pack) {
    line(
        html,
        "brief.pack",
        Words.of(
            "brief.pack.value",
            Words.of("brief.pack." + Choice.plain(pack.format())),
            Digits.sensible(pack.widthMm()),
            Digits.sensible(pack.lengthMm()),
            Digits.sensible(pack.sealWidthMm())));
  }

  private static void machine(StringBuilder html, Machine machine) {
    line(
        html,
        "brief.machine",
        Words.of(
            "brief.machine.value",
            machine.name(),
            machine.lanes(),
            Digits.sensible(machine.jawC()),
            Digits.sensible(machine.dwellS())));
  }

  private static void plant(StringBuilder html, Plant plant) {
    line(html, "brief.plant", plant.name());
    line(html, "brief.machines", PlantWords.centres(plant, false));
    line(html, "brief.services", PlantWords.centres(plant, true));
    line(html, "brief.webs", PlantWords.webs(plant));
  }

  private static void product(StringBuilder html, Product product) {
    line(html, "brief.product", product.name() + ", " + Digits.sensible(product.massG()) + " g");
    String contents =
        product.contents().stream()
            .map(content -> Words.of("form.content." + content))
            .collect(Collectors.joining(", "));
    line(html, "brief.contents", orNone(contents));
    product
        .moisture()
        .ifPresent(
            m ->
                line(
                    html,
                    "brief.moisture",
                    Words.of(
                        "brief.moisture.value",
                        Digits.sensible(m.criticalActivity()),
                        Digits.sensible(m.initialActivity()),
                        Digits.sensible(m.dryMassG()),
                        Words.of("brief.spoilt-by." + Choice.plain(m.spoiltBy())))));
    product
        .oxygen()
        .ifPresent(
            o ->
                line(
                    html,
                    "brief.oxygen",
                    Words.of(
                        "brief.oxygen.value",
                        Digits.sensible(o.uptakePpm()),
                        Digits.sensible(o.headspacePercent()))));
    product
        .volatileContent()
        .ifPresent(
            v ->
                line(
                    html,
                    "brief.volatile",
                    Words.of(
                        "brief.volatile.value",
                        v.substance(),
                        Digits.sensible(100 * v.massFraction()),
                        Digits.sensible(v.chargeG()),
                        Digits.sensible(v.allowedLossPercent()))));
  }

  private static String orNone(String words) {
    return words.isEmpty() ? Words.of("brief.none") : words;
  }

  private static void line(StringBuilder html, String key, String value) {
    html.append("<tr><td valign='top'><b>")
        .append(Html.escaped(Words.of(key)))
        .append("</b></td><td>")
        .append(Html.escaped(value))
        .append("</td></tr>");
  }
}
