package plyworth.workbench.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Place;

/** Finds the line of something in a study file that only the whole study shows to be wrong. */
final class StudyPlaces {

  private StudyPlaces() {}

  /**
   * The place of a value.
   *
   * @param file the file as the user named it
   * @param path keys that lead there
   * @return with its line where the file as it is written has it
   */
  static Place of(Path file, String path) {
    Place bare = new Place(file.toString(), 0, 0, path);
    try {
      return find(JsonText.read(Files.readString(file), file.toString()), path).orElse(bare);
    } catch (IOException | DataException e) {
      return bare;
    }
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
