package plyworth.shared.scoring;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * Names that a class, and the classes of its own package that it reaches, write in their constant
 * pools (layout after the Java Virtual Machine Specification, section 4.4).
 */
final class ClassReferences {

  private final ClassLoader loader;
  private final String home;
  private final Set<String> texts = new TreeSet<>();
  private final Set<String> seen = new HashSet<>();
  private final Deque<String> waiting = new ArrayDeque<>();

  private ClassReferences(Class<?> start) {
    loader = start.getClassLoader();
    home = start.getPackageName().replace('.', '/') + "/";
    waiting.add(start.getName().replace('.', '/'));
  }

  /** Every text in the constant pools reached from {@code start} within its package. */
  static Set<String> from(Class<?> start) throws IOException {
    ClassReferences references = new ClassReferences(start);
    while (!references.waiting.isEmpty()) {
      references.read(references.waiting.remove());
    }
    return references.texts;
  }

  private void read(String internalName) throws IOException {
    if (!seen.add(internalName)) {
      return;
    }
    try (InputStream stream = loader.getResourceAsStream(internalName + ".class")) {
      if (stream != null) {
        pool(new DataInputStream(new ByteArrayInputStream(stream.readAllBytes())));
      }
    }
  }

  private void pool(DataInputStream in) throws IOException {
    in.skipNBytes(8);
    int count = in.readUnsignedShort();
    String[] names = new String[count];
    int[] classes = new int[count];
    for (int i = 1; i < count; i++) {
      int tag = in.readUnsignedByte();
      if (tag == 1) {
        names[i] = in.readUTF();
        texts.add(names[i]);
      } else if (tag == 7) {
        classes[i] = in.readUnsignedShort();
      } else {
        in.skipNBytes(length(tag));
        i += tag == 5 || tag == 6 ? 1 : 0;
      }
    }
    for (int index : classes) {
      if (index > 0 && names[index].startsWith(home)) {
        waiting.add(names[index]);
      }
    }
  }

  private static int length(int tag) {
    return switch (tag) {
      case 5, 6 -> 8;
      case 15 -> 3;
      case 8, 16, 19, 20 -> 2;
      default -> 4;
    };
  }
}
