package org.standproud.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.drawing.Figures;
import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;
import org.standproud.drawing.Svg.Anchor;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/**
 * The forces of the cut on the stock in each direction of the plan: arrow length is proportional to
 * force, solid to the likely force and open to the worst.
 */
public final class PushView {

  private static final double WIDTH = 440;
  private static final double HEIGHT = 330;
  private static final double LONGEST = 92;
  private static final double BLOCK_X = 26;
  private static final double BLOCK_Y = 13;
  private static final double X = 170;
  private static final double Y = 160;
  private static final double LIFT_X = 395;

  private final Loads loads;
  private final Figures figures;
  private final double perN;
  private final Svg svg;

  /** One push: its direction on paper, its size and its target. */
  private record Push(String part, int dx, int dy, @Nullable Band band, String toward) {}

  private PushView(Loads loads, UnitSystem units, String name) {
    this.loads = loads;
    this.figures = new Figures(units);
    double most =
        pushes().stream()
            .map(Push::band)
            .mapToDouble(b -> b == null ? 0 : b.high())
            .max()
            .orElse(0);
    this.perN = most > 0 ? LONGEST / most : 0;
    this.svg = new Svg(name, WIDTH, HEIGHT, "What the cut pushes", description());
  }

  /**
   * Draws it.
   *
   * @param loads the forces of the cut
   * @param units the units of the reader
   * @param name prefix of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(Loads loads, UnitSystem units, String name) {
    return new PushView(loads, units, name).draw();
  }

  private List<Push> pushes() {
    List<Push> pushes = new ArrayList<>();
    pushes.add(new Push("push-fixed", 0, -1, loads.fixedN(), "toward the fixed jaw"));
    pushes.add(new Push("push-movable", 0, 1, loads.movableN(), "toward the movable jaw"));
    pushes.add(new Push("push-plus-x", 1, 0, loads.plusXN(), "toward +x"));
    pushes.add(new Push("push-minus-x", -1, 0, loads.minusXN(), "toward -x"));
    pushes.add(new Push("push-up", 0, -1, loads.liftN(), "up, out of the jaws"));
    return pushes;
  }

  private String draw() {
    svg.rect(Ink.STOCK, "stock", X - BLOCK_X, Y - BLOCK_Y, X + BLOCK_X, Y + BLOCK_Y);
    for (Push push : pushes()) {
      boolean up = push.part().equals("push-up");
      double x = up ? LIFT_X : X + push.dx() * (BLOCK_X + 2);
      double y = up ? Y : Y + push.dy() * (BLOCK_Y + 2);
      arrow(push, x, y);
    }
    svg.line(Ink.VISE, LIFT_X - 22, Y, LIFT_X + 22, Y);
    label(X, 14, Anchor.MIDDLE, "to the fixed jaw", loads.fixedN());
    label(X, Y + 13 + LONGEST + 18, Anchor.MIDDLE, "to the movable jaw", loads.movableN());
    label(2, Y - 32, Anchor.START, "to -x", loads.minusXN());
    label(X + BLOCK_X + 10, Y - 32, Anchor.START, "to +x", loads.plusXN());
    label(WIDTH - 2, Y + 24, Anchor.END, "up, out", loads.liftN());
    key();
    return svg.render();
  }

  private void arrow(Push push, double x, double y) {
    Band band = push.band();
    if (band == null || perN * band.high() < 1) {
      svg.circle(Ink.TOOTH, push.part() + "-none", x + push.dx() * 3, y + push.dy() * 3, 2.5);
      return;
    }
    Arrow.draw(
        svg,
        Ink.FORCE_WORST,
        push.part() + "-worst",
        x,
        y,
        push.dx(),
        push.dy(),
        perN * band.high());
    double likely = perN * band.likely();
    if (likely >= 1) {
      Arrow.draw(svg, Ink.FORCE, push.part() + "-likely", x, y, push.dx(), push.dy(), likely);
    }
  }

  private void label(double x, double y, Anchor anchor, String toward, @Nullable Band band) {
    svg.text(x, y, anchor, toward);
    svg.boldText(x, y + 16, anchor, band == null ? "not known" : size(band));
  }

  private String size(Band band) {
    String worst = figures.of(QuantityKind.FORCE, band.high());
    return band.high() == 0 || figures.of(QuantityKind.FORCE, band.likely()).equals(worst)
        ? worst
        : figures.number(QuantityKind.FORCE, band.likely()) + ", worst " + worst;
  }

  private void key() {
    double y = HEIGHT - 12;
    svg.rect(Ink.FORCE, "key-likely", 4, y - 8, 26, y - 2);
    svg.text(32, y, Anchor.START, "likely");
    svg.rect(Ink.FORCE_WORST, "key-worst", 82, y - 8, 104, y - 2);
    svg.text(110, y, Anchor.START, "at worst");
    svg.text(WIDTH - 2, y, Anchor.END, "length of arrow = size of push");
  }

  private String description() {
    Stream<String> lines =
        pushes().stream()
            .map(p -> p.toward() + ": " + (p.band() == null ? "not known" : size(p.band())));
    return "Greatest pushes of the cut on the stock over the pass, "
        + String.join("; ", lines.toList())
        + ".";
  }
}
