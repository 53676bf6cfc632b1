package plyworth.shared.route;

/** What a process does to the web. */
public enum ProcessRole {
  /** No process: the layer is bought as a web and unwound. */
  WEB,
  /** The layer is a part of the web outside it, made in one with it. */
  WEB_PART,
  /** The layer joins the web inside it to what lies outside. */
  BOND,
  /** The layer is put onto a web. */
  COATING,
  /** The layer is printed. */
  PRINT,
  /** The process puts no layer down: slitting. */
  FINISHING
}
