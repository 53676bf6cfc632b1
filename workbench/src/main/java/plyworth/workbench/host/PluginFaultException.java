package plyworth.workbench.host;

/** A plugin cannot be used. */
final class PluginFaultException extends Exception {

  private static final long serialVersionUID = 1L;

  PluginFaultException(String reason) {
    super(reason);
  }

  PluginFaultException(String reason, Throwable cause) {
    super(reason + ": " + innermost(cause), cause);
  }

  private static String innermost(Throwable cause) {
    Throwable at = cause;
    while (at.getCause() != null) {
      at = at.getCause();
    }
    return at.getClass().getSimpleName() + (at.getMessage() == null ? "" : " " + at.getMessage());
  }
}
