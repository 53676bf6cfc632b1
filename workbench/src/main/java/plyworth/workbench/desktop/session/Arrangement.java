package plyworth.workbench.desktop.session;

/**
 * How the parts of the window are arranged.
 *
 * @param view the view in the middle, from 0
 * @param candidateTab the tab of the selected candidate, from 0
 * @param side width of the weightings, pixels
 * @param middle width of the middle, pixels
 * @param candidateDivider height of the cross-section, pixels
 */
public record Arrangement(int view, int candidateTab, int side, int middle, int candidateDivider) {

  /** The same on another view. */
  public Arrangement on(int other) {
    return new Arrangement(other, candidateTab, side, middle, candidateDivider);
  }
}
