package plyworth.workbench.engine.table;

/** A candidate table would take more memory than it may. */
public final class TableTooLargeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient TableSize size;

  TableTooLargeException(TableSize size) {
    super(
        "The table of all candidates is too large: "
            + size.statement()
            + ". Offer fewer options per position, add neighbour rules, or start the program with"
            + " more memory (Java option -Xmx).");
    this.size = size;
  }

  /** What it would take. */
  public TableSize size() {
    return size;
  }
}
