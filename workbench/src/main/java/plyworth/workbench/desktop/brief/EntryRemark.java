package plyworth.workbench.desktop.brief;

import java.util.Optional;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.material.Sourced;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** What an entry comes to, where that is not what was typed, and where a figure comes from. */
final class EntryRemark {

  private EntryRemark() {}

  /** The remark on a field that is right; empty where there is nothing to say. */
  static String of(BriefField field, BriefDraft draft, BriefReading reading) {
    return switch (field) {
      case INITIAL_ACTIVITY -> activity(draft.text(field), reading, true);
      case CRITICAL_ACTIVITY -> activity(draft.text(field), reading, false);
      case KNOWN_PRODUCT -> known(draft.text(field));
      default -> converted(field.ask(), draft.text(field).strip());
    };
  }

  /** A figure in another unit than the one it is kept in. */
  private static String converted(Ask ask, String typed) {
    Measure measure = ask.measure();
    return measure == null || typed.isEmpty() || measure.inFirstUnit(typed)
        ? ""
        : Words.of("entry.comes-to", measure.sensible(measure.read(typed)));
  }

  /** A moisture, as the water activity at which the isotherm holds it. */
  private static String activity(String typed, BriefReading reading, boolean initial) {
    Optional<MoistureLimit> limit =
        reading.study().map(Study::brief).flatMap(brief -> brief.product().moisture());
    return typed.endsWith("%")
        ? limit
            .map(m -> initial ? m.initialActivity() : m.criticalActivity())
            .map(activity -> Words.of("entry.comes-to.activity", Digits.sensible(activity)))
            .orElse("")
        : "";
  }

  /** Where a product of the library is spoilt, and who says so. */
  private static String known(String id) {
    KnownProduct product = ProductLibrary.standard().find(id).orElseThrow();
    String source =
        Optional.ofNullable(product.figures().get(KnownProduct.CRITICAL_ACTIVITY))
            .map(figure -> figure.points().get(0))
            .map(EntryRemark::source)
            .orElse("");
    return (source + " " + product.note()).strip() + ".";
  }

  private static String source(Sourced figure) {
    return Words.of(
        "form.known-source",
        Digits.sensible(figure.range().typical()),
        Digits.sensible(figure.range().low()),
        Digits.sensible(figure.range().high()),
        figure.source());
  }
}
