package plyworth.plugins.barrier.course;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.shared.brief.Climate.Season;

/**
 * The water activity in a pack from filling to the limit, season by season: c(a) da/dt = G·p0·(RH −
 * a), solved by the method of Dormand and Prince, order 8, to 1e-12.
 */
public final class MoistureCourse {

  private static final double TOLERANCE = 1e-12;

  /** A product this near to the outside humidity stays there for the rest of the season. */
  private static final double SETTLED = 1e-9;

  /** Points kept of each step of the solver. */
  private static final int POINTS = 6;

  /**
   * A moment of the course.
   *
   * @param day days after filling
   * @param activity water activity in the pack
   * @param enteredG water that has crossed the pack, g
   */
  record Point(double day, double activity, double enteredG) {}

  private final MoistureBalance balance;
  private final List<Point> points = new ArrayList<>();
  private boolean reached;
  private boolean known = true;

  private MoistureCourse(MoistureBalance balance) {
    this.balance = balance;
  }

  /** The course of a pack up to its limit, at most to some day. */
  public static MoistureCourse of(MoistureBalance balance, PackConductance pack, double days) {
    MoistureCourse course = new MoistureCourse(balance);
    course.points.add(new Point(0, balance.sorption().limit().initialActivity(), 0));
    course.reached = balance.atOnce();
    if (!course.reached) {
      List<Season> round = balance.seasons().round();
      List<SampledConductance> sampled = round.stream().map(s -> balance.sampled(pack, s)).toList();
      balance
          .seasons()
          .walk(days, (s, from, to) -> course.pass(round.get(s), sampled.get(s), from, to));
    }
    return course;
  }

  /** Every moment kept, the first when filled. */
  List<Point> points() {
    return List.copyOf(points);
  }

  /** When the limit is reached. */
  Life life() {
    if (!known) {
      return Life.of(Double.NaN);
    }
    return reached ? Life.of(last().day()) : Life.beyond(last().day());
  }

  /** Water in product and head-space beyond that when filled, g. */
  Course uptake() {
    Sorption sorption = balance.sorption();
    double start = sorption.water(sorption.limit().initialActivity());
    Course.Track track = new Course.Track();
    for (Point point : points) {
      track.add(point.day(), sorption.water(point.activity()) - start);
    }
    return track.course("g", sorption.allowed());
  }

  /** The water activity. */
  public Course activity() {
    Course.Track track = new Course.Track();
    points.forEach(point -> track.add(point.day(), point.activity()));
    return track.course("", balance.sorption().limit().criticalActivity());
  }

  private Point last() {
    return points.get(points.size() - 1);
  }

  private boolean pass(Season season, SampledConductance conductance, double from, double to) {
    double outside = season.humidityPercent() / 100;
    known &= !Double.isNaN(conductance.at(outside));
    if (!known) {
      return false;
    }
    if (Math.abs(outside - last().activity()) > SETTLED && conductance.at(outside) > 0) {
      solve(season, conductance, to);
    }
    if (!reached && last().day() < to) {
      points.add(new Point(to, last().activity(), last().enteredG()));
    }
    return !reached;
  }

  private void solve(Season season, SampledConductance conductance, double to) {
    double outside = season.humidityPercent() / 100;
    double side = Math.signum(outside - last().activity());
    double critical = balance.sorption().limit().criticalActivity();
    Crossing limit = new Crossing(activity -> activity - critical);
    Crossing settled = new Crossing(activity -> side * (outside - activity) - SETTLED);
    var solver = new DormandPrince853Integrator(0, to - last().day(), TOLERANCE, TOLERANCE);
    solver.addStepHandler(this::keep);
    solver.addEventDetector(limit);
    solver.addEventDetector(settled);
    double[] start = {last().activity(), last().enteredG()};
    var equation = new SorptionEquation(balance.sorption(), season, conductance);
    solver.integrate(equation, new ODEState(last().day(), start), to);
    reached = limit.crossed();
  }

  private void keep(ODEStateInterpolator step) {
    double from = step.getPreviousState().getTime();
    double to = step.getCurrentState().getTime();
    for (int i = 1; i <= POINTS; i++) {
      double day = i == POINTS ? to : from + (to - from) * i / POINTS;
      double[] state = step.getInterpolatedState(day).getPrimaryState();
      points.add(new Point(day, state[0], state[1]));
    }
  }
}
