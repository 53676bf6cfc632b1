package plyworth.workbench.desktop.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plyworth.shared.brief.Brief;
import plyworth.shared.route.StructureText;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** The question in the form, today's structure, and the terms, which are limits of the study. */
final class TermsEntries {

  private static final String LEAD_TIME = "supply/lead-time";

  private TermsEntries() {}

  static void write(Study study, BriefDraft.Writing draft) {
    draft
        .put(BriefField.TITLE, study.title())
        .put(BriefField.WHY, study.question())
        .put(BriefField.NOTES, study.notes())
        .put(BriefField.BASELINE, study.baseline().toString());
    most(study, LEAD_TIME).ifPresent(limit -> draft.put(BriefField.DEADLINE, limit.figure()));
    priced(study)
        .ifPresent(
            limit ->
                draft
                    .put(BriefField.PRICE, limit.figure())
                    .put(
                        BriefField.PRICE_OF,
                        limit.criterion().substring(BriefField.Prices.PLUGIN.length())));
  }

  /** The limit that is the target price. */
  private static Optional<Limit> priced(Study study) {
    return BriefField.Prices.CRITERIA.stream()
        .flatMap(price -> most(study, BriefField.Prices.PLUGIN + price).stream())
        .findFirst();
  }

  private static Optional<Limit> most(Study study, String criterion) {
    return study.limits().stream().filter(limit -> bounds(limit, criterion)).findFirst();
  }

  private static boolean bounds(Limit limit, String criterion) {
    return limit.criterion().equals(criterion) && limit.bound() == Limit.Bound.AT_MOST;
  }

  static Optional<Study> read(BriefAnswers answers, Study base, Brief brief) {
    return answers.made(
        BriefField.TITLE,
        () -> {
          String title = answers.words(BriefField.TITLE);
          return base.with(brief)
              .withBaseline(baseline(answers, base))
              .withLimits(limits(answers, base))
              .withWords(
                  title,
                  answers.text(BriefField.WHY).strip(),
                  answers.text(BriefField.NOTES).strip());
        });
  }

  private static Structure baseline(BriefAnswers answers, Study base) {
    String typed = answers.text(BriefField.BASELINE).strip();
    try {
      return new StructureText(base.materialsAtHand(), base.processesAtHand())
          .read(typed.replaceAll("\\s+", " "));
    } catch (IllegalArgumentException e) {
      answers.fault(
          BriefField.BASELINE,
          typed.isEmpty() ? Words.of("form.baseline.needed") : Reason.of(e.getMessage()));
      return base.baseline();
    }
  }

  private static List<Limit> limits(BriefAnswers answers, Study base) {
    String price = BriefField.Prices.PLUGIN + answers.text(BriefField.PRICE_OF);
    String before = priced(base).map(Limit::criterion).orElse(price);
    List<Limit> limits =
        set(base.limits(), LEAD_TIME, LEAD_TIME, answers.figureIfAny(BriefField.DEADLINE));
    return set(limits, before, price, answers.figureIfAny(BriefField.PRICE));
  }

  /** Limits with that on one criterion in place of that on another, where it stood. */
  private static List<Limit> set(
      List<Limit> limits, String before, String criterion, OptionalDouble most) {
    List<Limit> changed = new ArrayList<>(limits);
    changed.removeIf(l -> !before.equals(criterion) && bounds(l, criterion));
    int at = 0;
    while (at < changed.size() && !bounds(changed.get(at), before)) {
      at++;
    }
    String reason = at < changed.size() ? changed.remove(at).reason() : "";
    if (most.isPresent() && Double.isFinite(most.getAsDouble())) {
      changed.add(at, new Limit(criterion, Limit.Bound.AT_MOST, most.getAsDouble(), reason));
    }
    return changed;
  }
}
