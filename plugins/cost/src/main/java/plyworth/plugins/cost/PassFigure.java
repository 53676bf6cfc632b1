package plyworth.plugins.cost;

import java.util.function.DoublePredicate;

/** The figures of a process that cost is reckoned with. */
enum PassFigure {
  SPEED("speed", x -> x > 0),
  SPEED_PAPER("speed-paper", x -> x > 0),
  SETUP_TIME("setup-time", x -> x >= 0),
  SETUP_WASTE("setup-waste", x -> x >= 0),
  RUNNING_WASTE("running-waste", x -> x >= 0 && x < 1),
  EFFICIENCY("efficiency", x -> x > 0 && x <= 1),
  HOUR_RATE("hour-rate", x -> x >= 0),
  EDGE_FACTOR("edge-factor", x -> x >= 1),
  INK_SOLIDS("ink-solids", x -> x > 0 && x <= 1),
  TOOLING_PER_COLOUR("tooling-per-colour", x -> x >= 0),
  TOOL_LIFE("tool-life", x -> x > 0);

  private final String id;
  private final DoublePredicate possible;

  PassFigure(String id, DoublePredicate possible) {
    this.id = id;
    this.possible = possible;
  }

  /** Id in the process library. */
  String id() {
    return id;
  }

  /** The figure itself, NaN when it is impossible: an impossible figure is as good as none. */
  double orUnknown(double figure) {
    return possible.test(figure) ? figure : Double.NaN;
  }
}
