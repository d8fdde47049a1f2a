package org.standproud.web.drawing;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.standproud.drawing.Figures;
import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;
import org.standproud.drawing.Svg.Anchor;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.Seat;
import org.standproud.setup.Setup;

/**
 * The set-up seen along the jaws, to scale: Y to the right, so the fixed jaw is on the right, Z up.
 * Jaws and cutter are cut short; the bend of the stock is magnified by a factor written beside it.
 */
public final class EndView {

  private static final double WIDTH = 440;
  private static final double LEFT = 116;
  private static final double RIGHT = 118;
  private static final double TOP = 24;
  private static final double FOOT = 84;
  private static final double JAW = 46;
  private static final double BED = 16;
  private static final double GREATEST_INSIDE = 400;
  private static final double BEND_DRAWN = 26;
  private static final double LONGEST_PUSH = 52;
  private static final double GREATEST_FACTOR = 10_000;

  /** Drawn width of a stop, as a part of the thickness of the stock. */
  private static final double STOP_OVER_THICKNESS = 0.6;

  private final Setup setup;
  private final Figures figures;
  private final Loads loads;
  private final ViewTransform paper;
  private final double height;
  private final Svg svg;

  private EndView(Setup setup, Loads loads, String name) {
    this.setup = setup;
    this.figures = new Figures(setup.units());
    this.loads = loads;
    double perM = scale();
    double middle = LEFT + left(perM);
    double free = WIDTH - LEFT - RIGHT - left(perM) - right(perM);
    this.paper = new ViewTransform(middle + free / 2, TOP + topM() * perM, perM);
    this.height = TOP + (topM() + jawHeightM()) * perM + BED + FOOT;
    this.svg = new Svg(name, WIDTH, height, "Seen along the jaws", description());
    svg.scale(paper.perM());
  }

  /**
   * Draws it.
   *
   * @param setup the set-up
   * @param loads the forces of the cut
   * @param name prefix of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(Setup setup, Loads loads, String name) {
    return new EndView(setup, loads, name).draw();
  }

  private double scale() {
    double perM = 20_000;
    while (left(perM) + right(perM) > WIDTH - LEFT - RIGHT
        || (topM() + jawHeightM()) * perM > GREATEST_INSIDE) {
      perM *= 0.97;
    }
    return perM;
  }

  private double left(double perM) {
    double cutter = (radiusM() - setup.cut().offsetM()) * perM;
    return Math.max(outerM(JawSide.MOVABLE) * perM + JAW, cutter);
  }

  private double right(double perM) {
    double cutter = (radiusM() + setup.cut().offsetM()) * perM;
    return Math.max(outerM(JawSide.FIXED) * perM + JAW, cutter);
  }

  /** The farther of a jaw face and the faces of the clamps on its side, in m. */
  private double outerM(JawSide side) {
    return Math.max(faceM(side), ClampsDrawn.farthestM(setup, side));
  }

  /** Top of the drawing above the jaws: a piece of the cutter above the stock, in m. */
  private double topM() {
    double piece = Math.max(setup.cutter().diameterM() * 0.45, setup.stickOutM() * 0.15);
    double cutter =
        setup.stickOutM()
            - setup.cut().axialDepthM()
            + Math.max(piece, setup.cut().axialDepthM() * 1.2);
    return Math.max(cutter, ClampsDrawn.highestM(setup));
  }

  private double jawHeightM() {
    return Math.max(setup.hold().vise().jawHeightM(), setup.hold().gripDepthM());
  }

  private double radiusM() {
    return setup.cutter().diameterM() / 2;
  }

  private double faceM(JawSide side) {
    return setup.stock().thicknessM() / 2 + setup.hold().packingM(side);
  }

  private String draw() {
    drawVise();
    drawSeat();
    drawStock();
    drawStop();
    setup.hold().beside().forEach(this::drawClamp);
    setup.hold().packing().forEach(this::drawPacking);
    drawCutter();
    Band bend = loads.edgeDeflectionM();
    JawSide jaw = loads.loadJaw();
    if (bend != null && jaw != null) {
      drawBend(bend, jaw);
    }
    drawPushes();
    dimension();
    return svg.render();
  }

  private void drawVise() {
    double fixed = paper.x(faceM(JawSide.FIXED));
    double movable = paper.x(-faceM(JawSide.MOVABLE));
    double top = paper.y(0);
    double bottom = paper.y(-setup.hold().vise().jawHeightM());
    svg.rect(Ink.VISE, "fixed-jaw", fixed, top, fixed + JAW, bottom);
    svg.hatch(fixed, top, fixed + JAW, bottom, true);
    svg.rect(Ink.VISE, "movable-jaw", movable - JAW, top, movable, bottom);
    double bed = paper.y(-jawHeightM());
    svg.rect(Ink.VISE, "bed", movable - JAW, bed, fixed + JAW, bed + BED);
    svg.hatch(movable - JAW, bed, fixed + JAW, bed + BED, true);
    svg.text(fixed + 2, bed + BED + 16, Anchor.START, "fixed jaw");
    svg.text(movable - 2, bed + BED + 16, Anchor.END, "movable jaw");
  }

  private void drawSeat() {
    double under = -setup.hold().gripDepthM();
    double bed = -jawHeightM();
    if (setup.hold().seat() != Seat.PARALLELS || under <= bed) {
      return;
    }
    double half = setup.stock().thicknessM() / 2;
    double wide = half * 0.5;
    for (int side : new int[] {-1, 1}) {
      svg.rect(
          Ink.VISE,
          "parallel",
          paper.x(side * half),
          paper.y(under),
          paper.x(side * (half - wide)),
          paper.y(bed));
    }
  }

  private void drawStock() {
    double half = setup.stock().thicknessM() / 2;
    svg.rect(
        Ink.STOCK,
        "stock",
        paper.x(-half),
        paper.y(setup.stickOutM()),
        paper.x(half),
        paper.y(-setup.hold().gripDepthM()));
    double from = Math.max(-half, setup.cut().offsetM() - radiusM());
    double to = Math.min(half, setup.cut().offsetM() + radiusM());
    if (to > from) {
      svg.rect(
          Ink.REMOVED,
          "taken-off",
          paper.x(from),
          paper.y(setup.stickOutM()),
          paper.x(to),
          paper.y(setup.stickOutM() - setup.cut().axialDepthM()));
    }
  }

  /** A stop is in front of or behind the end of the stock: dashed, and only at a given height. */
  private void drawStop() {
    Double heightM = setup.hold().stopHeightM();
    if (heightM == null || heightM <= 0) {
      return;
    }
    double half = setup.stock().thicknessM() * STOP_OVER_THICKNESS / 2;
    svg.rect(Ink.GHOST, "stop", paper.x(-half), paper.y(heightM), paper.x(half), paper.y(0));
  }

  private void drawClamp(Clamp clamp) {
    double way = clamp.side() == JawSide.FIXED ? 1 : -1;
    double face = paper.x(way * clamp.faceM(setup.stock().thicknessM()));
    double outer = face + way * ClampsDrawn.DEEP;
    svg.rect(Ink.VISE, "clamp", face, paper.y(clamp.heightM()), outer, paper.y(0));
    svg.hatch(face, paper.y(clamp.heightM()), outer, paper.y(0), true);
  }

  private void drawPacking(Packing piece) {
    double side = piece.side() == JawSide.FIXED ? 1 : -1;
    double inner = side * setup.stock().thicknessM() / 2;
    double outer = inner + side * piece.sizeM();
    if (piece.kind() == PackingKind.WIRE) {
      svg.circle(
          Ink.PACKING,
          "packing",
          paper.x((inner + outer) / 2),
          paper.y(-piece.depthM()),
          Math.max(1.5, paper.size(piece.sizeM() / 2)));
      return;
    }
    boolean whole = piece.kind() != PackingKind.STRIP;
    double tall =
        whole ? setup.hold().gripDepthM() : Math.min(setup.hold().gripDepthM(), 3 * piece.sizeM());
    double middle = whole ? setup.hold().gripDepthM() / 2 : piece.depthM();
    svg.rect(
        Ink.PACKING,
        "packing",
        paper.x(inner),
        paper.y(-middle + tall / 2),
        paper.x(outer),
        paper.y(-middle - tall / 2));
  }

  /** The end of the cutter, cut short above with a break line. */
  private void drawCutter() {
    double y = setup.cut().offsetM();
    double left = paper.x(y - radiusM());
    double right = paper.x(y + radiusM());
    double end = paper.y(setup.stickOutM() - setup.cut().axialDepthM());
    double top = paper.y(topM());
    svg.polyline(Ink.CUTTER, "cutter", left, top, left, end, right, end, right, top);
    double step = (right - left) / 6;
    double[] wave = new double[14];
    for (int i = 0; i <= 6; i++) {
      wave[2 * i] = left + i * step;
      wave[2 * i + 1] = top + (i % 2 == 0 ? 0 : i % 4 == 1 ? -4 : 4);
    }
    svg.polyline(Ink.DIMENSION, "break", wave);
    svg.line(Ink.AXIS, paper.x(y), top - 8, paper.x(y), end + 8);
  }

  /** The shape of a plate clamped at the jaw top and pushed at its upper end. */
  private void drawBend(Band bend, JawSide jaw) {
    double side = jaw == JawSide.FIXED ? 1 : -1;
    double factor = factor(paper.size(bend.high()));
    int steps = 20;
    double[] points = new double[4 * (steps + 1)];
    double half = setup.stock().thicknessM() / 2;
    for (int i = 0; i <= steps; i++) {
      double s = (double) i / steps;
      double off = side * factor * bend.high() * s * s * (3 - s) / 2;
      double z = paper.y(setup.stickOutM() * s);
      points[2 * i] = paper.x(off - half);
      points[2 * i + 1] = z;
      int back = 2 * (2 * steps + 1 - i);
      points[back] = paper.x(off + half);
      points[back + 1] = z;
    }
    svg.polyline(Ink.BENT, "bent", points);
    double foot = height - 40;
    svg.boldText(WIDTH / 2, foot, Anchor.MIDDLE, "leans toward the " + jaw.words());
    svg.boldText(WIDTH / 2, foot + 17, Anchor.MIDDLE, "at worst " + bent(bend));
    svg.text(
        WIDTH / 2,
        foot + 35,
        Anchor.MIDDLE,
        "dashed: the bend at its ends, drawn × " + plain(factor));
  }

  /** The pushes across and upward at the cut, one scale for all of them. */
  private void drawPushes() {
    double most =
        Stream.of(loads.fixedN(), loads.movableN(), loads.liftN())
            .mapToDouble(b -> b == null ? 0 : b.high())
            .max()
            .orElse(0);
    double perN = most > 0 ? LONGEST_PUSH / most : 0;
    double half = setup.stock().thicknessM() / 2;
    double low = setup.stickOutM() - setup.cut().axialDepthM();
    double at = paper.y(low) + 12;
    drawPush("push-fixed", loads.fixedN(), perN, paper.x(half) + 2, at, 1, 0);
    drawPush("push-movable", loads.movableN(), perN, paper.x(-half) - 2, at, -1, 0);
    drawPush("push-up", loads.liftN(), perN, paper.x(0), at + LONGEST_PUSH + 14, 0, -1);
  }

  private void drawPush(
      String part, @Nullable Band band, double perN, double x, double y, double ux, double uy) {
    if (band == null || perN * band.high() < 3) {
      return;
    }
    Arrow.draw(svg, Ink.FORCE_WORST, part + "-worst", x, y, ux, uy, perN * band.high());
    if (perN * band.likely() >= 3) {
      Arrow.draw(svg, Ink.FORCE, part + "-likely", x, y, ux, uy, perN * band.likely());
    }
  }

  /** The evidence has no value beyond the end of its range: a plate on a hinge bends freely. */
  private String bent(Band bend) {
    Fact.Number range = (Fact.Number) Vocabulary.EDGE_DEFLECTION.type();
    return figures.deflection(bend.high()) + (bend.high() >= range.greatest() ? " or more" : "");
  }

  /** The largest of 1, 2, 5, 10 … that keeps the bend inside the drawing. */
  static double factor(double drawnUnmagnified) {
    if (drawnUnmagnified <= 0) {
      return 1;
    }
    double most = Math.min(GREATEST_FACTOR, BEND_DRAWN / drawnUnmagnified);
    double ten = Math.pow(10, Math.floor(Math.log10(most)));
    double lead = most / ten;
    return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * ten;
  }

  private static String plain(double factor) {
    return factor >= 1 ? Long.toString(Math.round(factor)) : Double.toString(factor);
  }

  private void dimension() {
    Dimensions dimensions = new Dimensions(svg);
    double half = setup.stock().thicknessM() / 2;
    double right =
        Math.max(paper.x(outerM(JawSide.FIXED)) + JAW, paper.x(setup.cut().offsetM() + radiusM()));
    double top = paper.y(setup.stickOutM());
    dimensions.vertical(
        right + 14,
        paper.x(half) + 2,
        paper.y(0),
        top,
        figures.length(setup.stickOutM()) + " out",
        true);
    dimensions.vertical(
        right + 14,
        paper.x(half) + 2,
        paper.y(0),
        paper.y(-setup.hold().gripDepthM()),
        figures.length(setup.hold().gripDepthM()) + " grip",
        true);
    double left =
        Math.min(
            paper.x(-outerM(JawSide.MOVABLE)) - JAW, paper.x(setup.cut().offsetM() - radiusM()));
    dimensions.vertical(
        left - 12,
        paper.x(-half) - 2,
        top,
        paper.y(setup.stickOutM() - setup.cut().axialDepthM()),
        figures.length(setup.cut().axialDepthM()) + " deep",
        false);
    setup.hold().packing().forEach(p -> dimensionPacking(dimensions, p, left));
  }

  private void dimensionPacking(Dimensions dimensions, Packing piece, double left) {
    boolean placed = piece.kind() == PackingKind.WIRE || piece.kind() == PackingKind.STRIP;
    if (!placed) {
      return;
    }
    String words = piece.kind().words() + " " + figures.length(piece.depthM());
    if (piece.side() == JawSide.MOVABLE) {
      dimensions.vertical(
          left - 12,
          paper.x(-faceM(JawSide.MOVABLE)) - 2,
          paper.y(0),
          paper.y(-piece.depthM()),
          words,
          false);
    } else {
      svg.patchedText(
          paper.x(faceM(JawSide.FIXED)) + 4, paper.y(-piece.depthM()) + 4, Anchor.START, words);
    }
  }

  private String description() {
    @Nullable Band bend = loads.edgeDeflectionM();
    @Nullable JawSide jaw = loads.loadJaw();
    String bent =
        bend == null || jaw == null
            ? " How far it bends is not known."
            : " It leans toward the " + jaw.words() + ", at worst by " + bent(bend) + ".";
    return "End view to scale, fixed jaw on the right. Grip "
        + figures.length(setup.hold().gripDepthM())
        + ", stick-out "
        + figures.length(setup.stickOutM())
        + ", axial depth of cut "
        + figures.length(setup.cut().axialDepthM())
        + "."
        + standing()
        + bent;
  }

  private String standing() {
    Double stopM = setup.hold().stopHeightM();
    StringBuilder text = new StringBuilder();
    if (stopM != null) {
      text.append(" The stop stands ").append(figures.length(stopM)).append(" above the jaws.");
    }
    for (Clamp clamp : setup.hold().beside()) {
      text.append(" A clamp stands ").append(figures.length(clamp.heightM()));
      text.append(" above the jaws on the side of the ").append(clamp.side().words()).append('.');
    }
    return text.toString();
  }
}
