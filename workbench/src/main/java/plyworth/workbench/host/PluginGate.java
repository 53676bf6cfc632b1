package plyworth.workbench.host;

/** Parent of every plugin's class loader: shows the JDK and the shared module, nothing else. */
final class PluginGate extends ClassLoader {

  private static final String SHARED = "plyworth.shared.";

  private final ClassLoader ours;

  PluginGate(ClassLoader ours) {
    super("plyworth-plugin-gate", ClassLoader.getPlatformClassLoader());
    this.ours = ours;
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    if (name.startsWith(SHARED)) {
      return ours.loadClass(name);
    }
    throw new ClassNotFoundException(name + " is not shown to plugins");
  }
}
