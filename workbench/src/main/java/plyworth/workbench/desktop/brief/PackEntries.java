package plyworth.workbench.desktop.brief;

import java.util.Optional;
import plyworth.shared.brief.Pack;
import plyworth.workbench.desktop.word.Words;

/** The pack in the form. */
final class PackEntries {

  private PackEntries() {}

  static void write(Pack pack, BriefDraft.Writing draft) {
    draft
        .put(BriefField.PACK_FORMAT, pack.format())
        .put(BriefField.PACK_WIDTH, pack.widthMm())
        .put(BriefField.PACK_LENGTH, pack.lengthMm())
        .put(BriefField.SEAL_WIDTH, pack.sealWidthMm())
        .put(BriefField.OVERLAP, pack.overlapMm())
        .put(BriefField.HEADSPACE, pack.headspaceCm3());
  }

  static Optional<Pack> read(BriefAnswers answers) {
    double width = answers.figure(BriefField.PACK_WIDTH);
    double length = answers.figure(BriefField.PACK_LENGTH);
    double seal = answers.figure(BriefField.SEAL_WIDTH);
    Pack.Format format = answers.choice(BriefField.PACK_FORMAT, Pack.Format.values());
    double overlap = answers.asks(BriefField.OVERLAP) ? answers.figure(BriefField.OVERLAP) : 0;
    double headspace = answers.figure(BriefField.HEADSPACE);
    room(answers, BriefField.PACK_LENGTH, length, seal);
    if (format == Pack.Format.SACHET_FOUR_SIDE || format == Pack.Format.SACHET_FOLDED) {
      room(answers, BriefField.PACK_WIDTH, width, seal);
    }
    return faulty(answers)
        ? Optional.empty()
        : Optional.of(new Pack(format, width, length, seal, overlap, headspace));
  }

  /** Two seals must leave room for the product. */
  private static void room(BriefAnswers answers, BriefField field, double across, double seal) {
    if (across > 0 && 2 * seal >= across) {
      String both = Measure.LENGTH.write(2 * seal);
      answers.fault(BriefField.SEAL_WIDTH, Words.of("form.no-room", both, field.title()));
    }
  }

  private static boolean faulty(BriefAnswers answers) {
    return answers.faults().keySet().stream()
        .anyMatch(field -> field.ask().section() == BriefSection.PACK);
  }
}
