package plyworth.workbench.ranking;

import java.util.List;
import plyworth.shared.study.Limit;

/** A limit against the narrowed figures of a column. */
final class LimitCheck {

  /** What narrowed figures say of a limit. */
  enum Answer {
    ALLOWED,
    BROKEN,
    /** Too near for the column to tell. */
    NEAR,
    UNKNOWN
  }

  private final Limit limit;
  private final int criterion;
  private final float nearest;
  private final float above;
  private final float below;
  private final boolean sharp;

  LimitCheck(Limit limit, int criterion) {
    this.limit = limit;
    this.criterion = criterion;
    nearest = (float) limit.figure();
    above = Math.nextUp(nearest);
    below = Math.nextDown(nearest);
    sharp = nearest == limit.figure() && (Float.floatToRawIntBits(nearest) & 1) == 0;
  }

  /** The limits of a model. */
  static List<LimitCheck> of(ValueModel model) {
    return model.limits().stream()
        .map(limit -> new LimitCheck(limit, model.indexOf(limit.criterion()).orElseThrow()))
        .toList();
  }

  /** The limit. */
  Limit limit() {
    return limit;
  }

  /** Index of its criterion. */
  int criterion() {
    return criterion;
  }

  /** What a column entry says; columns are rounded to odd, so a sharp limit is met exactly. */
  Answer of(float figure) {
    if (figure != figure) {
      return Answer.UNKNOWN;
    }
    if (figure >= below && figure <= above && !(sharp && figure == nearest)) {
      return Answer.NEAR;
    }
    return limit.allows(figure) ? Answer.ALLOWED : Answer.BROKEN;
  }

  /** What bounds say: an answer that holds at both ends holds between. */
  Answer of(float low, float high) {
    Answer atLow = of(low);
    return atLow == of(high) ? atLow : Answer.NEAR;
  }
}
