package plyworth.workbench.host;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import plyworth.shared.scoring.InterfaceLevel;
import plyworth.shared.scoring.ScoringPlugin;

/**
 * A jar, or a folder holding a jar and the libraries it brings.
 *
 * @param origin the jar or folder
 * @param id the plugin id that the manifest names
 * @param jars every jar it loads from
 */
record PluginPackage(Path origin, String id, List<Path> jars) {

  /** Reads the manifest, and refuses before any class is loaded. */
  static PluginPackage inspect(Path origin) throws PluginFaultException {
    List<Path> jars = jarsOf(origin);
    String id = null;
    for (Path jar : jars) {
      Attributes attributes = attributes(jar);
      String named = attributes.getValue(InterfaceLevel.PLUGIN_ATTRIBUTE);
      if (named != null) {
        checkLevel(attributes.getValue(InterfaceLevel.LEVEL_ATTRIBUTE));
        id = named;
      }
    }
    if (id == null) {
      throw new PluginFaultException(
          "the manifest does not name a plugin; it needs " + InterfaceLevel.PLUGIN_ATTRIBUTE);
    }
    return new PluginPackage(origin, id, jars);
  }

  private static List<Path> jarsOf(Path origin) throws PluginFaultException {
    if (!Files.isDirectory(origin)) {
      return List.of(origin);
    }
    try (Stream<Path> files = Files.list(origin)) {
      return files.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
    } catch (IOException e) {
      throw new PluginFaultException("the folder cannot be read", e);
    }
  }

  private static Attributes attributes(Path jar) throws PluginFaultException {
    try (JarFile file = new JarFile(jar.toFile())) {
      Manifest manifest = file.getManifest();
      return manifest == null ? new Attributes() : manifest.getMainAttributes();
    } catch (IOException e) {
      throw new PluginFaultException(jar.getFileName() + " is not a readable jar", e);
    }
  }

  private static void checkLevel(String level) throws PluginFaultException {
    if (!Integer.toString(InterfaceLevel.CURRENT).equals(level)) {
      throw new PluginFaultException(
          "it is built for interface level "
              + level
              + ", this program has level "
              + InterfaceLevel.CURRENT
              + "; install a version of the plugin for this program");
    }
  }

  /** Loads the one plugin, in a class loader of its own behind the gate. */
  LoadedPlugin load() throws PluginFaultException {
    URLClassLoader loader =
        new URLClassLoader(
            "plyworth-plugin-" + id, urls(), new PluginGate(getClass().getClassLoader()));
    try {
      return loadFrom(loader);
    } catch (PluginFaultException e) {
      close(loader);
      throw e;
    }
  }

  private LoadedPlugin loadFrom(ClassLoader loader) throws PluginFaultException {
    List<ScoringPlugin> found = new ArrayList<>();
    try {
      for (ScoringPlugin plugin : ServiceLoader.load(ScoringPlugin.class, loader)) {
        if (plugin.getClass().getClassLoader() == loader) {
          found.add(plugin);
        }
      }
      if (found.size() != 1) {
        throw new PluginFaultException("it offers " + found.size() + " plugins; it must offer one");
      }
      Declarations.check(id, found.get(0));
    } catch (ServiceConfigurationError | LinkageError | RuntimeException e) {
      throw new PluginFaultException("it cannot be loaded", e);
    }
    return new LoadedPlugin(id, found.get(0), origin);
  }

  private URL[] urls() {
    return jars.stream().map(PluginPackage::url).toArray(URL[]::new);
  }

  private static URL url(Path jar) {
    try {
      return jar.toUri().toURL();
    } catch (MalformedURLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void close(URLClassLoader loader) {
    try {
      loader.close();
    } catch (IOException e) {
      // the plugin is refused anyway; its jar only stays open until the program ends
    }
  }
}
