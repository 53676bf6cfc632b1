package plyworth.workbench.engine.table;

/** Watches long work and may cancel it. Called from several threads, and often. */
public interface Progress {

  /** Nobody watches. */
  Progress NONE =
      new Progress() {
        @Override
        public void scored(long candidates, long of) {}

        @Override
        public boolean cancelled() {
          return false;
        }
      };

  /**
   * More is done.
   *
   * @param candidates candidates that are settled: scored, or known not to be among the best; or
   *     worlds in which one structure is scored
   * @param of how many there are
   */
  void scored(long candidates, long of);

  /** Whether to stop as soon as possible; what is done is kept. */
  boolean cancelled();
}
