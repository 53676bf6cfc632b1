package plyworth.workbench.desktop.brief;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.study.Study;

/**
 * What stands in the form of a brief, as it was typed, right or wrong.
 *
 * @param texts the text of each field that was filled in
 */
record BriefDraft(Map<BriefField, String> texts) {

  /** Copies. */
  BriefDraft {
    Map<BriefField, String> copy = new EnumMap<>(BriefField.class);
    copy.putAll(texts);
    texts = Collections.unmodifiableMap(copy);
  }

  /** What the form of a study begins with. */
  static BriefDraft of(Study study) {
    Writing writing = new Writing();
    TermsEntries.write(study, writing);
    ProductEntries.write(study.brief().product(), writing);
    StorageEntries.write(study.brief(), writing);
    PackEntries.write(study.brief().pack(), writing);
    MachineEntries.write(study.brief().machine(), writing);
    MarketEntries.write(study.brief(), writing);
    return writing.draft();
  }

  /** The text of a field; a choice that was never made is the first. */
  String text(BriefField field) {
    Ask ask = field.ask();
    boolean first = ask.how() == Ask.How.CHOICE;
    return texts.getOrDefault(field, first ? ask.choices().get(0) : "");
  }

  /** The same with another text in one field. */
  BriefDraft with(BriefField field, String text) {
    Map<BriefField, String> changed = new EnumMap<>(BriefField.class);
    changed.putAll(texts);
    changed.put(field, text);
    return new BriefDraft(changed);
  }

  /** Whether a field is asked, given the others. */
  boolean asks(BriefField field) {
    BriefField governor = field.ask().governor();
    return governor == null || field.ask().when().contains(text(governor));
  }

  /** Whether both say the same in every field. */
  boolean says(BriefDraft other) {
    for (BriefField field : BriefField.values()) {
      if (!text(field).equals(other.text(field))) {
        return false;
      }
    }
    return true;
  }

  /** This draft, with what was typed since another began. */
  BriefDraft keeping(BriefDraft typed, BriefDraft began) {
    BriefDraft kept = this;
    for (BriefField field : BriefField.values()) {
      if (!typed.text(field).equals(began.text(field))) {
        kept = kept.with(field, typed.text(field));
      }
    }
    return kept;
  }

  /** A draft in the making. */
  static final class Writing {

    private final Map<BriefField, String> texts = new EnumMap<>(BriefField.class);

    /** The draft as it stands. */
    BriefDraft draft() {
      return new BriefDraft(texts);
    }

    /** Puts words in. */
    Writing put(BriefField field, String text) {
      texts.put(field, text);
      return this;
    }

    /** Puts a figure in, given in the inside unit. */
    Writing put(BriefField field, double figure) {
      return put(field, field.ask().measure().write(figure));
    }

    /** Puts a choice in. */
    Writing put(BriefField field, Enum<?> choice) {
      return put(field, Choice.plain(choice));
    }
  }
}
