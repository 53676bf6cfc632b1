package plyworth.plugins.barrier.course;

/** The {@link LossTable} of a course, made when it is first asked for: it takes a while. */
final class LossTables {

  private final VolatileCourse course;
  private LossTable table;

  LossTables(VolatileCourse course) {
    this.course = course;
  }

  synchronized LossTable get() {
    if (table == null) {
      table = new LossTable(course);
    }
    return table;
  }
}
