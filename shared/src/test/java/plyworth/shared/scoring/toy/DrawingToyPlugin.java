package plyworth.shared.scoring.toy;

import java.awt.Color;

/** Breaks the rule that a plugin never draws. Named by text alone, so that no other class does. */
class DrawingToyPlugin extends ToyPlugin {

  Color colour() {
    return new Color(0, 0, 0);
  }
}
