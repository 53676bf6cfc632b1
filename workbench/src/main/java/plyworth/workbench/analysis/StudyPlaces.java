package plyworth.workbench.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Place;

/** Says where in its file something stands that only the whole study shows to be wrong. */
public final class StudyPlaces {

  private StudyPlaces() {}

  /**
   * The place of a value.
   *
   * @param file the file as the user named it
   * @param path keys that lead there
   * @return with its line where the file as it is written has it
   */
  public static Place of(Path file, String path) {
    return of(file, read(file), path);
  }

  private static Place of(Path file, Optional<Json> json, String path) {
    return json.flatMap(j -> find(j, path)).orElse(new Place(file.toString(), 0, 0, path));
  }

  private static Optional<Json> read(Path file) {
    try {
      return Optional.of(JsonText.read(Files.readString(file), file.toString()));
    } catch (IOException | DataException e) {
      return Optional.empty();
    }
  }

  /**
   * The refusal of a study.
   *
   * @param file the file as the user named it
   * @param found what is wrong with it, at least one
   * @return the first; it suppresses one for each of the others that says something else
   */
  public static DataException refusal(Path file, List<References.Dangling> found) {
    Optional<Json> json = read(file);
    List<DataException> refusals = new ArrayList<>();
    Set<String> said = new HashSet<>();
    for (References.Dangling wrong : found) {
      if (said.add(wrong.problem())) {
        Place place = of(file, json, wrong.path());
        refusals.add(new DataException(place, wrong.problem(), wrong.remedy()));
      }
    }
    DataException first = refusals.get(0);
    refusals.subList(1, refusals.size()).forEach(first::addSuppressed);
    return first;
  }

  private static Optional<Place> find(Json json, String path) {
    if (json.place().path().equals(path)) {
      return Optional.of(json.place());
    }
    Collection<? extends Json> inner = List.of();
    if (json instanceof Json.Obj object) {
      inner = object.entries().values();
    } else if (json instanceof Json.Arr array) {
      inner = array.items();
    }
    return inner.stream()
        .filter(i -> path.startsWith(i.place().path()))
        .map(i -> find(i, path))
        .flatMap(Optional::stream)
        .findFirst();
  }
}
