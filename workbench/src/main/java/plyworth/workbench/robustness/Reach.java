package plyworth.workbench.robustness;

import java.util.List;

/**
 * How far the candidates reach whose chances were drawn.
 *
 * @param compared how many were
 * @param whole whether every candidate is among them that is ranked at typical figures
 * @param reaching how many came among the first ten in some draw
 * @param last how many were let in last: the last tenth
 * @param lastReaching how many of these came among the first ten in some draw; where there are any,
 *     candidates that were not compared may as well
 */
public record Reach(int compared, boolean whole, int reaching, int last, int lastReaching) {

  static Reach of(Field field, Chances chances) {
    List<Boolean> among = chances.everAmongTen();
    int late = field.late();
    return new Reach(
        among.size(),
        field.whole(),
        (int) among.stream().filter(a -> a).count(),
        late,
        (int) among.subList(among.size() - late, among.size()).stream().filter(a -> a).count());
  }
}
