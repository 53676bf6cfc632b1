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
   * @param candidates candidates that are scored, in enumeration order and without gaps
   * @param of candidates there are
   */
  void scored(long candidates, long of);

  /** Whether to stop as soon as possible; what is done is kept. */
  boolean cancelled();
}
