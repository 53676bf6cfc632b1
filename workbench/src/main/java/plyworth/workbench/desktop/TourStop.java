package plyworth.workbench.desktop;

import java.util.List;

/**
 * Where the tour stops.
 *
 * @param key of what is said there
 * @param place key of the command that brings it into sight
 * @param part name of the part of the window that is framed
 */
record TourStop(String key, String place, String part) {

  /** The way from the question to the decision. */
  static final List<TourStop> ALL =
      List.of(
          new TourStop("tour.brief", "place.brief", "view"),
          new TourStop("tour.positions", "place.positions", "view"),
          new TourStop("tour.chart", "place.chart", "view"),
          new TourStop("tour.weights", "place.weights", "weights"),
          new TourStop("tour.section", "place.figures", "cross-section"),
          new TourStop("tour.figures", "place.figures", "candidate-tabs"),
          new TourStop("tour.findings", "place.findings", "candidate-tabs"),
          new TourStop("tour.explanation", "place.explanation", "candidate-tabs"),
          new TourStop("tour.tradeoff", "place.tradeoff", "view"),
          new TourStop("tour.robustness", "place.robustness", "view"),
          new TourStop("tour.review", "place.review", "view"));
}
