package org.standproud.web.drawing;

import java.util.Locale;
import org.standproud.assessment.TraceDocument;
import org.standproud.drawing.Figures;
import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;
import org.standproud.drawing.Svg.Anchor;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;

/**
 * How far a number is from the limit of a card: the limit as a line in the middle, the number as a
 * filled mark, the worst end of its band as an open one. Left of the line is the good side.
 */
public final class DistanceBar {

  private static final double WIDTH = 300;
  private static final double HEIGHT = 46;
  private static final double MIDDLE = WIDTH / 2;
  private static final double HALF = 118;
  private static final double Y = 26;

  private DistanceBar() {}

  /**
   * Draws it.
   *
   * @param margin how far the card is from flipping
   * @param card id of the card
   * @param units the units of the reader
   * @return an SVG element
   */
  public static String of(TraceDocument.Distance margin, String card, UnitSystem units) {
    String limit = words(margin.threshold(), margin.unit(), units);
    String value = words(margin.value(), margin.unit(), units);
    String name = "bar-" + card.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "-");
    Svg svg =
        new Svg(
            name,
            WIDTH,
            HEIGHT,
            "Distance to the limit",
            "The limit is " + limit + ", this is " + value + ".");
    svg.rect(Ink.CHATTER, "past", MIDDLE, Y - 9, WIDTH - 8, Y + 9);
    svg.line(Ink.GRID, 8, Y, WIDTH - 8, Y);
    double most = Math.max(Math.abs(margin.adverse()), Math.abs(margin.clearance()));
    double per = most > 0 ? HALF / most : 0;
    double at = MIDDLE - margin.clearance() * per;
    double worst = MIDDLE - margin.adverse() * per;
    svg.line(Ink.CURVE, at, Y, worst, Y);
    svg.line(Ink.STOCK, MIDDLE, Y - 12, MIDDLE, Y + 12);
    svg.circle(Ink.TOUCH, "worst", worst, Y, 4.5);
    svg.circle(Ink.FORCE, "value", at, Y, 5);
    svg.text(8, 11, Anchor.START, "clear");
    svg.text(MIDDLE, 11, Anchor.MIDDLE, "limit " + limit);
    svg.text(WIDTH - 8, 11, Anchor.END, "past it");
    return svg.render();
  }

  /**
   * A recorded number in the reader's units.
   *
   * @param si the number
   * @param unit its SI unit, null for a pure number
   * @param units the units of the reader
   */
  public static String words(
      double si, @org.jspecify.annotations.Nullable String unit, UnitSystem units) {
    Figures figures = new Figures(units);
    return unit == null
        ? figures.of(QuantityKind.NUMBER, si)
        : UnitCode.of(unit)
            .map(code -> figures.of(QuantityKind.of(code.dimension()), code.toSi(si)))
            .orElse(si + " " + unit);
  }
}
