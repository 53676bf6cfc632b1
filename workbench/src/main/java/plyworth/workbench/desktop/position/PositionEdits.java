package plyworth.workbench.desktop.position;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import plyworth.shared.store.SelfContained;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;

/**
 * Changes to the positions of a study. Materials and processes that come in with an option are
 * carried from then on.
 */
final class PositionEdits {

  private PositionEdits() {}

  private static Study positions(Study study, Consumer<List<Position>> edit) {
    List<Position> positions = new ArrayList<>(study.positions());
    edit.accept(positions);
    return SelfContained.of(study.withPositions(positions));
  }

  private static Study options(Study study, int position, Consumer<List<Option>> edit) {
    Position before = study.positions().get(position);
    List<Option> options = new ArrayList<>(before.options());
    edit.accept(options);
    return positions(study, all -> all.set(position, new Position(before.title(), options)));
  }

  /** More options at a position; those that stand there already are left out. */
  static Study add(Study study, int position, List<Option> more) {
    return options(
        study,
        position,
        options -> more.stream().filter(o -> !options.contains(o)).forEach(options::add));
  }

  /** One option less; the last one of a position stays. */
  static Study remove(Study study, int position, int option) {
    boolean last = study.positions().get(position).options().size() == 1;
    return last ? study : options(study, position, options -> options.remove(option));
  }

  /** Another option in place of one; where it stands there already, the one just goes. */
  static Study replace(Study study, int position, int option, Option by) {
    return options(
        study,
        position,
        options -> {
          options.set(option, by);
          if (Collections.frequency(options, by) > 1) {
            options.remove(option);
          }
        });
  }

  /** Whether a position may stay empty; one with no other option must be able to. */
  static Study allowNothing(Study study, int position, boolean allowed) {
    List<Option> others =
        study.positions().get(position).options().stream()
            .filter(o -> !o.equals(Option.NOTHING))
            .toList();
    List<Option> options =
        allowed || others.isEmpty()
            ? Stream.concat(Stream.of(Option.NOTHING), others.stream()).toList()
            : others;
    return options(
        study,
        position,
        all -> {
          all.clear();
          all.addAll(options);
        });
  }

  /** A new position that holds nothing yet. */
  static Study insert(Study study, int at, String title) {
    return positions(study, all -> all.add(at, new Position(title, List.of(Option.NOTHING))));
  }

  /** Another title of a position. */
  static Study rename(Study study, int position, String title) {
    Position before = study.positions().get(position);
    return positions(study, all -> all.set(position, new Position(title, before.options())));
  }

  /** A position one further out or in; at the ends it stays where it is. */
  static Study move(Study study, int position, int by) {
    int to = position + by;
    boolean inside = to >= 0 && to < study.positions().size();
    return inside ? positions(study, all -> Collections.swap(all, position, to)) : study;
  }

  /** A position less; the last one stays. */
  static Study drop(Study study, int position) {
    return study.positions().size() == 1 ? study : positions(study, all -> all.remove(position));
  }
}
