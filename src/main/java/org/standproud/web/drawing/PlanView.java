package org.standproud.web.drawing;

import java.util.Optional;
import org.standproud.drawing.Figures;
import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;
import org.standproud.drawing.Svg.Anchor;
import org.standproud.setup.Clamp;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.JawSide;
import org.standproud.setup.Operation;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;
import org.standproud.setup.Spin;
import org.standproud.setup.Stop;

/**
 * The set-up seen from above, to scale: X to the right, Y up, so that the fixed jaw is at the top
 * of the sheet. Only the jaws are cut short.
 */
public final class PlanView {

  private static final double WIDTH = 440;
  private static final double SIDE = 84;
  private static final double TOP = 22;
  private static final double FOOT = 112;
  private static final double JAW = 34;
  private static final double STOP = 12;
  private static final double GREATEST_INSIDE = 330;

  private final Setup setup;
  private final Figures figures;
  private final Optional<Touch> touch;
  private final ViewTransform paper;
  private final double height;
  private final Svg svg;

  private PlanView(Setup setup, String name) {
    this.setup = setup;
    this.figures = new Figures(setup.units());
    this.touch = Touch.of(setup);
    double perM = scale();
    double above = above(perM);
    double wide = (reachM(1) + reachM(-1)) * perM;
    double zero = (WIDTH - wide) / 2 + reachM(-1) * perM;
    this.paper = new ViewTransform(zero, TOP + above, perM);
    this.height = TOP + above + below(perM) + FOOT;
    this.svg = new Svg(name, WIDTH, height, "Seen from above", description());
    svg.scale(paper.perM());
  }

  /**
   * Draws it.
   *
   * @param setup the set-up
   * @param name prefix of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(Setup setup, String name) {
    return new PlanView(setup, name).draw();
  }

  private double scale() {
    double perM = (WIDTH - 2 * SIDE) / (reachM(1) + reachM(-1));
    while (above(perM) + below(perM) > GREATEST_INSIDE) {
      perM *= 0.97;
    }
    return perM;
  }

  /** Extent of the drawing along X to one side, including the cutter at first touch. */
  private double reachM(int side) {
    double still = Math.max(setup.stock().lengthM(), setup.hold().vise().jawWidthM()) / 2;
    for (Clamp clamp : setup.hold().beside()) {
      still = Math.max(still, side * (side > 0 ? clamp.toM() : clamp.fromM()));
    }
    double moving = touch.map(t -> side * firstCentreM(t) + t.radiusM()).orElse(0.0);
    return Math.max(Math.max(still, radiusM()), moving);
  }

  private static double firstCentreM(Touch t) {
    return t.contact().xM() - t.xM(t.contact().angleRad());
  }

  private double radiusM() {
    return setup.cutter().diameterM() / 2;
  }

  private double above(double perM) {
    double jaw = outerM(JawSide.FIXED) * perM + JAW;
    return Math.max(jaw, (setup.cut().offsetM() + radiusM()) * perM);
  }

  private double below(double perM) {
    double jaw = outerM(JawSide.MOVABLE) * perM + JAW;
    return Math.max(jaw, (radiusM() - setup.cut().offsetM()) * perM);
  }

  /** Distance of a jaw face from the middle of the stock, packing included, in m. */
  private double faceM(JawSide side) {
    return setup.stock().thicknessM() / 2 + setup.hold().packingM(side);
  }

  /** The farther of a jaw face and the faces of the clamps on its side, in m. */
  private double outerM(JawSide side) {
    return Math.max(faceM(side), ClampsDrawn.farthestM(setup, side));
  }

  private String draw() {
    drawJaws();
    drawStock();
    setup.hold().beside().forEach(this::drawClamp);
    touch.ifPresent(this::drawGhost);
    drawCutter();
    touch.ifPresent(this::drawCutting);
    drawSpin();
    dimension();
    drawFeed();
    return svg.render();
  }

  private void drawJaws() {
    double half = setup.hold().vise().jawWidthM() / 2;
    double left = paper.x(-half);
    double right = paper.x(half);
    double fixed = paper.y(faceM(JawSide.FIXED));
    double movable = paper.y(-faceM(JawSide.MOVABLE));
    svg.rect(Ink.VISE, "fixed-jaw", left, fixed - JAW, right, fixed);
    svg.hatch(left, fixed - JAW, right, fixed, true);
    svg.rect(Ink.VISE, "movable-jaw", left, movable, right, movable + JAW);
    svg.patchedText(left, fixed - JAW - 6, Anchor.START, "fixed jaw");
    svg.patchedText(left, movable + JAW + 14, Anchor.START, "movable jaw");
    drawPacking(half);
  }

  private void drawPacking(double halfJawM) {
    double half = Math.min(halfJawM, setup.stock().lengthM() / 2);
    for (Packing piece : setup.hold().packing()) {
      double side = piece.side() == JawSide.FIXED ? 1 : -1;
      double inner = side * setup.stock().thicknessM() / 2;
      svg.rect(
          Ink.PACKING,
          "packing",
          paper.x(-half),
          paper.y(inner),
          paper.x(half),
          paper.y(inner + side * piece.sizeM()));
    }
  }

  private void drawStock() {
    double halfX = setup.stock().lengthM() / 2;
    double halfY = setup.stock().thicknessM() / 2;
    svg.rect(Ink.STOCK, "stock", paper.x(-halfX), paper.y(-halfY), paper.x(halfX), paper.y(halfY));
    svg.line(Ink.AXIS, paper.x(-halfX) - 8, paper.y(0), paper.x(halfX) + 8, paper.y(0));
    Stop stop = setup.hold().stop();
    if (stop != null && stop.takesMinusX()) {
      drawStop(paper.x(-halfX), -1);
    }
    if (stop != null && stop.takesPlusX()) {
      drawStop(paper.x(halfX), 1);
    }
  }

  private void drawStop(double x, int side) {
    double half = Math.max(7, paper.size(setup.stock().thicknessM() * 0.3));
    double outer = x + side * STOP;
    svg.rect(Ink.VISE, "stop", x, paper.y(0) - half, outer, paper.y(0) + half);
    svg.hatch(x, paper.y(0) - half, outer, paper.y(0) + half, true);
  }

  private void drawClamp(Clamp clamp) {
    double way = clamp.side() == JawSide.FIXED ? -1 : 1;
    double face = paper.y(-way * clamp.faceM(setup.stock().thicknessM()));
    double outer = face + way * ClampsDrawn.DEEP;
    svg.rect(Ink.VISE, "clamp", paper.x(clamp.fromM()), face, paper.x(clamp.toM()), outer);
    svg.hatch(paper.x(clamp.fromM()), face, paper.x(clamp.toM()), outer, true);
  }

  private void drawGhost(Touch t) {
    double x = paper.x(firstCentreM(t));
    double y = paper.y(setup.cut().offsetM());
    svg.circle(Ink.GHOST, "cutter-at-first-touch", x, y, paper.size(t.radiusM()));
    double atX = paper.x(t.contact().xM());
    double atY = paper.y(t.contact().yM());
    svg.circle(Ink.TOUCH, "first-touch", atX, atY, 5);
    svg.line(Ink.TOUCH, atX - 5, atY, atX + 5, atY);
    svg.line(Ink.TOUCH, atX, atY - 5, atX, atY + 5);
  }

  private void drawCutter() {
    double x = paper.x(0);
    double y = paper.y(setup.cut().offsetM());
    double r = paper.size(radiusM());
    svg.circle(Ink.CUTTER, "cutter", x, y, r);
    svg.line(Ink.AXIS, x - r - 6, y, x + r + 6, y);
    svg.line(Ink.AXIS, x, y - r - 6, x, y + r + 6);
  }

  private void drawCutting(Touch t) {
    int steps = 32;
    double[] points = new double[2 * (steps + 1)];
    for (int i = 0; i <= steps; i++) {
      double angle = t.arc().entryRad() + t.arc().spanRad() * i / steps;
      points[2 * i] = paper.x(t.xM(angle));
      points[2 * i + 1] = paper.y(setup.cut().offsetM() + t.yM(angle));
    }
    svg.polyline(Ink.CUTTING, "arc-in-cut", points);
    double middle = (t.arc().entryRad() + t.arc().exitRad()) / 2;
    for (int k = 0; k < setup.cutter().teeth(); k++) {
      drawTooth(t, middle + 2 * Math.PI * k / setup.cutter().teeth());
    }
  }

  private void drawTooth(Touch t, double angle) {
    double turned = angle % (2 * Math.PI);
    boolean cuts = t.arc().holds(turned);
    double x = paper.x(t.xM(turned));
    double y = paper.y(setup.cut().offsetM() + t.yM(turned));
    double size = Math.min(cuts ? 5 : 3.5, Math.max(1.5, paper.size(radiusM()) * 0.25));
    svg.circle(cuts ? Ink.TOOTH_CUTTING : Ink.TOOTH, "tooth", x, y, size);
  }

  /** Three eighths of a turn with an arrow head, beside the cutter if it has no room inside. */
  private void drawSpin() {
    double inside = paper.size(radiusM());
    double r = inside > 30 ? inside * 0.7 : inside + 10;
    double way = setup.cutter().spin() == Spin.CLOCKWISE ? 1 : -1;
    double from = -0.75 * Math.PI;
    double sweep = way * 0.6 * Math.PI;
    double start = way > 0 ? from : from + 0.6 * Math.PI;
    double x = paper.x(0);
    double y = paper.y(setup.cut().offsetM());
    int steps = 16;
    double[] points = new double[2 * (steps + 1)];
    for (int i = 0; i <= steps; i++) {
      double angle = start + sweep * i / steps;
      points[2 * i] = x + r * Math.cos(angle);
      points[2 * i + 1] = y + r * Math.sin(angle);
    }
    svg.polyline(Ink.MOTION, "spin", points);
    double end = start + sweep;
    svg.head(
        Ink.MOTION_HEAD,
        x + r * Math.cos(end) - way * 5 * Math.sin(end),
        y + r * Math.sin(end) + way * 5 * Math.cos(end),
        -way * Math.sin(end),
        way * Math.cos(end),
        11);
  }

  private void dimension() {
    Dimensions dimensions = new Dimensions(svg);
    double halfX = setup.stock().lengthM() / 2;
    double halfY = setup.stock().thicknessM() / 2;
    double foot = height - FOOT;
    dimensions.horizontal(
        foot + 34,
        paper.y(-halfY) + 2,
        paper.x(-halfX),
        paper.x(halfX),
        figures.length(setup.stock().lengthM()));
    dimensions.vertical(
        SIDE - 8,
        paper.x(-halfX) - 2,
        paper.y(-halfY),
        paper.y(halfY),
        figures.length(setup.stock().thicknessM()),
        false);
    dimensionOffset(dimensions);
  }

  private void dimensionOffset(Dimensions dimensions) {
    double offset = setup.cut().offsetM();
    if (offset != 0) {
      dimensions.vertical(
          WIDTH - SIDE + 8,
          paper.x(0),
          paper.y(offset),
          paper.y(0),
          figures.length(Math.abs(offset)),
          true);
    }
  }

  private String offset() {
    double offset = setup.cut().offsetM();
    if (offset == 0) {
      return "cutter axis over the middle of the stock";
    }
    return "cutter axis "
        + figures.length(Math.abs(offset))
        + " from the middle, toward the "
        + (offset > 0 ? JawSide.FIXED : JawSide.MOVABLE).words();
  }

  private void drawFeed() {
    double way = setup.cut().feed() == FeedDirection.PLUS_X ? 1 : -1;
    double y = height - 59;
    double middle = WIDTH / 2;
    svg.line(Ink.MOTION, middle - way * 60, y, middle + way * 50, y);
    svg.head(Ink.MOTION_HEAD, middle + way * 60, y, way, 0, 14);
    String feed = travel();
    String spin = setup.cutter().spin().words();
    svg.boldText(middle, height - 38, Anchor.MIDDLE, "cutter travels " + feed + ", spins " + spin);
    svg.text(middle, height - 21, Anchor.MIDDLE, offset());
    drawKey();
  }

  private String travel() {
    return setup.cut().feed() == FeedDirection.PLUS_X ? "left to right" : "right to left";
  }

  private void drawKey() {
    double y = height - 4;
    touch.ifPresent(
        t -> {
          svg.circle(Ink.TOUCH, "key", 9, y - 5, 4);
          svg.text(18, y, Anchor.START, "first touch");
        });
    String standing = standing();
    if (!standing.isEmpty()) {
      svg.rect(Ink.VISE, "key-stop", 104, y - 10, 116, y);
      svg.hatch(104, y - 10, 116, y, true);
      svg.text(121, y, Anchor.START, standing);
    }
    svg.text(WIDTH - 4, y, Anchor.END, "+x to the right");
  }

  /** What surrounds the stock besides the jaws, or nothing. */
  private String standing() {
    Stop stop = setup.hold().stop();
    String stopped = stop == null || stop == Stop.NONE ? "" : "stop";
    if (setup.hold().beside().isEmpty()) {
      return stopped;
    }
    return stopped.isEmpty() ? "clamp" : "stop, clamp";
  }

  private String description() {
    String dash = setup.cut().operation() == Operation.TOP_EDGE ? "the top edge" : "a broad side";
    return "Plan to scale, fixed jaw at the top. Stock "
        + figures.length(setup.stock().lengthM())
        + " long and "
        + figures.length(setup.stock().thicknessM())
        + " thick. A cutter of "
        + figures.length(setup.cutter().diameterM())
        + " with "
        + setup.cutter().teeth()
        + " teeth mills "
        + dash
        + ", traveling "
        + travel()
        + " and spinning "
        + setup.cutter().spin().words()
        + "; its axis stands "
        + figures.length(setup.cut().offsetM())
        + " from the middle of the stock, positive toward the fixed jaw."
        + touch
            .map(t -> " It touches first at " + place(t) + ".")
            .orElse(" Where it touches is not known.");
  }

  private static String place(Touch t) {
    return switch (t.contact().place()) {
      case END_FACE -> "the end face";
      case CORNER_AT_FIXED_JAW_SIDE -> "the corner on the fixed-jaw side";
      case CORNER_AT_MOVABLE_JAW_SIDE -> "the corner on the movable-jaw side";
    };
  }
}
