package plyworth.workbench.desktop.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A list after one of its entries was edited. */
final class EditedList {

  private EditedList() {}

  /**
   * The list with an entry in place of another, with one more, or with one less.
   *
   * @param entry what is put in; empty to take out
   * @param row which entry; -1 for one more
   */
  static <T> List<T> of(List<T> list, Optional<T> entry, int row) {
    List<T> changed = new ArrayList<>(list);
    if (row < 0) {
      entry.ifPresent(changed::add);
    } else if (entry.isPresent()) {
      changed.set(row, entry.get());
    } else {
      changed.remove(row);
    }
    return List.copyOf(changed);
  }
}
