package plyworth.shared.scoring;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plugin interface as lines of text: one for every type and member that a plugin can see. */
final class Signatures {

  /** The rooms whose words a plugin speaks. */
  private static final List<String> PACKAGES =
      List.of("quantity", "material", "structure", "brief", "route", "plant", "scoring");

  private final SortedSet<String> lines = new TreeSet<>();

  private Signatures() {}

  /** All lines as the classes are now, sorted. */
  static SortedSet<String> now() {
    Signatures signatures = new Signatures();
    PACKAGES.forEach(signatures::readPackage);
    return signatures.lines;
  }

  private void readPackage(String name) {
    try {
      Path classes =
          Path.of(ScoringPlugin.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      try (Stream<Path> files = Files.list(classes.resolve("plyworth/shared").resolve(name))) {
        files
            .map(file -> file.getFileName().toString())
            .filter(file -> file.endsWith(".class") && !file.equals("package-info.class"))
            .map(file -> "plyworth.shared." + name + "." + file.replace(".class", ""))
            .forEach(this::readType);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private void readType(String name) {
    Class<?> type = type(name);
    if (type.isAnonymousClass() || type.isLocalClass() || !visible(type)) {
      return;
    }
    lines.add(header(type));
    Stream.of(type.getDeclaredMethods(), type.getDeclaredConstructors())
        .flatMap(Arrays::stream)
        .filter(member -> visible(member) && !member.isSynthetic())
        .forEach(member -> lines.add(member.toGenericString()));
    Stream.of(type.getDeclaredFields())
        .filter(field -> visible(field) && !field.isSynthetic())
        .forEach(field -> lines.add(field(field)));
  }

  private static Class<?> type(String name) {
    try {
      return Class.forName(name, false, ScoringPlugin.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean visible(Class<?> type) {
    return type == null
        || Modifier.isPublic(type.getModifiers()) && visible(type.getDeclaringClass());
  }

  private static boolean visible(Member member) {
    return Modifier.isPublic(member.getModifiers()) || Modifier.isProtected(member.getModifiers());
  }

  private static String header(Class<?> type) {
    String permits =
        type.isSealed()
            ? " permits "
                + Arrays.stream(type.getPermittedSubclasses())
                    .map(Class::getName)
                    .sorted()
                    .collect(Collectors.joining(","))
            : "";
    String implemented =
        Arrays.stream(type.getInterfaces())
            .map(Class::getName)
            .sorted()
            .collect(Collectors.joining(","));
    return type.toGenericString() + (implemented.isEmpty() ? "" : " of " + implemented) + permits;
  }

  /** With its value where the compiler copies it into plugins. */
  private static String field(Field field) {
    boolean constant =
        Modifier.isStatic(field.getModifiers())
            && Modifier.isFinal(field.getModifiers())
            && (field.getType().isPrimitive() || field.getType() == String.class);
    try {
      return field.toGenericString() + (constant ? " = " + field.get(null) : "");
    } catch (IllegalAccessException e) {
      return field.toGenericString();
    }
  }
}
