package plyworth.workbench.analysis;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.ExactScores;

/** Scores single candidates in full, and remembers them, since the best tend to stay the best. */
final class ExactFigures implements ExactScores {

  private static final int MOST = 20_000;

  private final Compiled compiled;
  private final Map<Long, double[]> known = new ConcurrentHashMap<>();

  ExactFigures(Compiled compiled) {
    this.compiled = compiled;
  }

  @Override
  public double[] figures(long path) {
    if (known.size() > MOST) {
      known.clear();
    }
    return known.computeIfAbsent(path, this::score);
  }

  private double[] score(long path) {
    BoundPlugins bound = compiled.prepared().bound();
    return bound.figures(bound.score(compiled.paths().structure(path)));
  }
}
