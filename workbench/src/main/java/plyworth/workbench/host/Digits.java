package plyworth.workbench.host;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How figures are written for people and for files. */
public final class Digits {

  private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);
  private static final MathContext NINE = new MathContext(9, RoundingMode.HALF_EVEN);

  private Digits() {}

  /** Three significant digits, whole from 100 up; an en dash for the unknown. */
  public static String sensible(double figure) {
    if (Double.isNaN(figure)) {
      return "–";
    }
    if (Double.isInfinite(figure)) {
      return figure > 0 ? "∞" : "−∞";
    }
    double size = Math.abs(figure);
    if (size != 0 && (size < 1e-4 || size >= 1e9)) {
      return new BigDecimal(figure).round(THREE).toString().replace("E", "e");
    }
    if (size >= 1000) {
      return String.format(java.util.Locale.ROOT, "%,d", Math.round(figure)).replace(',', ' ');
    }
    BigDecimal rounded = new BigDecimal(figure).round(size >= 100 ? new MathContext(3) : THREE);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Nine significant digits, the same on every platform; NaN stays NaN. */
  public static double exported(double figure) {
    return Double.isFinite(figure) ? new BigDecimal(figure).round(NINE).doubleValue() : Double.NaN;
  }
}
