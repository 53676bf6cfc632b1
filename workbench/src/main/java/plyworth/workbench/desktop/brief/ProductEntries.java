package plyworth.workbench.desktop.brief;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Product;
import plyworth.shared.brief.VolatileContent;

/** The product and what harms it, in the form. */
final class ProductEntries {

  private ProductEntries() {}

  static void write(Product product, BriefDraft.Writing draft) {
    draft
        .put(BriefField.PRODUCT_NAME, product.name())
        .put(BriefField.PRODUCT_FORM, product.form())
        .put(BriefField.PRODUCT_MASS, product.massG())
        .put(BriefField.CONTENTS, String.join(", ", product.contents()));
    product.moisture().ifPresent(moisture -> MoistureEntries.write(moisture, draft));
    product
        .oxygen()
        .ifPresent(
            oxygen ->
                draft
                    .put(BriefField.OXYGEN, "limit")
                    .put(BriefField.OXYGEN_UPTAKE, oxygen.uptakePpm())
                    .put(BriefField.OXYGEN_HEADSPACE, oxygen.headspacePercent()));
    product.volatileContent().ifPresent(content -> write(content, draft));
  }

  private static void write(VolatileContent content, BriefDraft.Writing draft) {
    draft
        .put(BriefField.VOLATILE, "limit")
        .put(BriefField.SUBSTANCE, content.substance())
        .put(BriefField.MASS_FRACTION, content.massFraction())
        .put(BriefField.CHARGE, content.chargeG())
        .put(BriefField.ALLOWED_LOSS, content.allowedLossPercent());
  }

  /** The product; moisture contents are read at the warmest temperature of the climate. */
  static Optional<Product> read(BriefAnswers answers, Optional<Climate> climate) {
    return answers.made(
        BriefField.PRODUCT_NAME,
        () ->
            new Product(
                answers.words(BriefField.PRODUCT_NAME),
                answers.choice(BriefField.PRODUCT_FORM, Product.Form.values()),
                answers.figure(BriefField.PRODUCT_MASS),
                contents(answers),
                asked(answers, BriefField.DRY_MASS, () -> MoistureEntries.read(answers, climate)),
                asked(answers, BriefField.OXYGEN_UPTAKE, () -> oxygen(answers)),
                asked(answers, BriefField.SUBSTANCE, () -> volatileContent(answers))));
  }

  private static <T> Optional<T> asked(BriefAnswers answers, BriefField field, Supplier<T> reader) {
    return answers.asks(field) ? answers.made(field, reader) : Optional.empty();
  }

  private static Set<String> contents(BriefAnswers answers) {
    Set<String> contents = new TreeSet<>();
    Stream.of(answers.text(BriefField.CONTENTS).split(",\\s*"))
        .filter(content -> !content.isEmpty())
        .forEach(contents::add);
    return contents;
  }

  private static OxygenLimit oxygen(BriefAnswers answers) {
    return new OxygenLimit(
        answers.figure(BriefField.OXYGEN_UPTAKE), answers.figure(BriefField.OXYGEN_HEADSPACE));
  }

  private static VolatileContent volatileContent(BriefAnswers answers) {
    return new VolatileContent(
        answers.words(BriefField.SUBSTANCE),
        answers.figure(BriefField.MASS_FRACTION),
        answers.figure(BriefField.CHARGE),
        answers.figure(BriefField.ALLOWED_LOSS));
  }
}
