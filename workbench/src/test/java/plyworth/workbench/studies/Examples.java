package plyworth.workbench.studies;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.host.PluginCatalog;

/** The example studies and the plugins that come along, each read once. */
final class Examples {

  static final Path FOLDER = Path.of("../studies");

  static final String SUGAR = "sugar-stick";
  static final String SEASONING = "seasoning-stick";
  static final String WIPE = "isopropanol-wipe";
  static final String SNACK = "freeze-dried-snack";
  static final String BY_GRAM = "seasoning-stick-by-gram";
  static final List<String> ALL = List.of(SUGAR, SEASONING, BY_GRAM, WIPE, SNACK);

  /** Those too large to be scored as a whole in a test. */
  static final List<String> LARGE = List.of(SEASONING, BY_GRAM);

  static final PluginCatalog CATALOG = PluginCatalog.load(Path.of("target/plyworth/plugins"));

  private static final Map<String, Desk> WHOLE = new ConcurrentHashMap<>();
  private static final Map<String, Desk> THINNED = new ConcurrentHashMap<>();

  private Examples() {}

  static Path file(String name) {
    return FOLDER.resolve(name + StudyFile.SUFFIX);
  }

  static Study study(String name) {
    return StudyFile.open(file(name)).study();
  }

  /** A study with all its options: for single structures, and for ranking all but the large. */
  static Desk whole(String name) {
    return WHOLE.computeIfAbsent(name, n -> new Desk(study(n)));
  }

  /** A study with one option of each kind per position: small enough for anything. */
  static Desk thinned(String name) {
    return THINNED.computeIfAbsent(name, n -> new Desk(Thinned.of(study(n))));
  }
}
