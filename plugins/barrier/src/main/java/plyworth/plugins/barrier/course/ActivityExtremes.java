package plyworth.plugins.barrier.course;

import java.util.List;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.permeation.AlcoholWater;

/**
 * Between which activities the alcohol stays until the allowed loss, times the factors by which any
 * pack may conduct more or less than at the storage climate.
 *
 * <p>Water leaves only while its activity is above the humidity outside, so the alcohol grows no
 * richer than where the two meet; and it grows no weaker than where all water that may be taken up
 * has been, and the allowed alcohol is gone (analytic).
 *
 * @param least by season, per unit of conductance at the storage climate
 * @param most by season
 */
record ActivityExtremes(double[] least, double[] most) {

  /** The extremes of a course in every season, all of one liquid. */
  static ActivityExtremes of(List<VolatileCourse> courses, double allowed, SeasonFactors factors) {
    double richest = 0;
    double wettest = 0;
    for (VolatileCourse course : courses) {
      richest = Math.max(richest, Math.max(course.filledFraction(), course.meetingFraction()));
      wettest = Math.max(wettest, Math.max(course.waterG(), course.meetingWater()));
    }
    double[] least = new double[courses.size()];
    double[] most = new double[courses.size()];
    for (int s = 0; s < courses.size(); s++) {
      AlcoholWater mixture = courses.get(s).mixture();
      double weakest = mixture.moleFraction(1 - allowed, wettest);
      least[s] = factors.lowest()[s] * mixture.alcoholActivity(weakest);
      most[s] = factors.highest()[s] * mixture.alcoholActivity(richest);
    }
    return new ActivityExtremes(least, most);
  }
}
