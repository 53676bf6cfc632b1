package plyworth.shared.brief;

/** Range checks of the brief's figures, with messages that say what would be right. */
final class Check {

  private Check() {}

  static void positive(String what, double figure, String unit) {
    if (!(figure > 0) || !Double.isFinite(figure)) {
      throw new IllegalArgumentException(
          what + " is " + figure + "; it must be greater than 0 " + unit);
    }
  }

  static void notNegative(String what, double figure, String unit) {
    between(what, figure, 0, Double.MAX_VALUE, unit);
  }

  static void between(String what, double figure, double lowest, double highest, String unit) {
    if (!(figure >= lowest && figure <= highest)) {
      String bound =
          highest == Double.MAX_VALUE
              ? "not be below " + lowest
              : "lie between " + lowest + " and " + highest;
      throw new IllegalArgumentException(
          what + " is " + figure + "; it must " + bound + " " + unit);
    }
  }
}
