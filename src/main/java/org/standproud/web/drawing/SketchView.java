package org.standproud.web.drawing;

import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.standproud.drawing.Figures;
import org.standproud.drawing.Ink;
import org.standproud.drawing.Svg;
import org.standproud.drawing.Svg.Anchor;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.request.KnownParts;

/**
 * An incomplete set-up seen along the jaws. Known dimensions are to scale with a full outline and
 * their number; unknown ones are dashed, with a question mark.
 */
public final class SketchView {

  private static final double WIDTH = 440;
  private static final double SIDE = 124;
  private static final double TOP = 26;
  private static final double FOOT = 78;
  private static final double JAW = 46;
  private static final double BED = 14;
  private static final double GREATEST_INSIDE = 330;

  /**
   * Typical values that only set the proportions of unknown dimensions: a plate in a medium vise.
   */
  private static final double THICKNESS_M = 0.016;

  private static final double STICK_OUT_M = 0.035;
  private static final double JAW_HEIGHT_M = 0.045;
  private static final double GRIP_M = 0.025;
  private static final double CUTTER_M = 0.03;

  private final KnownParts known;
  private final Figures figures;
  private final UnaryOperator<String> words;
  private final double thicknessM;
  private final double gripM;
  private final double stickOutM;
  private final double jawHeightM;
  private final double cutterM;
  private final ViewTransform paper;
  private final double height;
  private final Svg svg;

  private SketchView(KnownParts known, UnitSystem units, UnaryOperator<String> words, String name) {
    this.known = known;
    this.figures = new Figures(units);
    this.words = words;
    Vise vise = known.vise();
    this.thicknessM = or(known.thicknessM(), THICKNESS_M);
    this.jawHeightM = vise == null ? JAW_HEIGHT_M : vise.jawHeightM();
    Double stock = known.heightM();
    double grip = stock == null ? GRIP_M : Math.min(GRIP_M, stock / 3);
    this.gripM = or(known.gripDepthM(), grip);
    this.stickOutM = stock == null ? STICK_OUT_M : Math.max(stock - gripM, stock * 0.02);
    this.cutterM = known.cutter() == null ? CUTTER_M : known.cutter().diameterM();
    double perM = scale();
    this.paper = new ViewTransform(WIDTH / 2, TOP + topM() * perM, perM);
    this.height = TOP + (topM() + depthM()) * perM + BED + FOOT;
    this.svg = new Svg(name, WIDTH, height, words.apply("sketch.title"), description());
  }

  private static double or(@Nullable Double value, double otherwise) {
    return value == null ? otherwise : value;
  }

  /**
   * Draws it.
   *
   * @param known the known dimensions
   * @param units the units of the reader
   * @param words the message of a key
   * @param name prefix of its ids, unique in a page
   * @return an SVG element
   */
  public static String of(
      KnownParts known, UnitSystem units, UnaryOperator<String> words, String name) {
    return new SketchView(known, units, words, name).draw();
  }

  private double scale() {
    double perM = 20_000;
    while (wideM() * perM + 2 * JAW > WIDTH - 2 * SIDE + 2 * JAW
        || (topM() + depthM()) * perM > GREATEST_INSIDE) {
      perM *= 0.97;
    }
    return perM;
  }

  private double wideM() {
    double packing = known.packingM(JawSide.FIXED) + known.packingM(JawSide.MOVABLE);
    return Math.max(thicknessM + packing, cutterM * 0.5);
  }

  private double topM() {
    return stickOutM + Math.max(cutterM * 0.3, stickOutM * 0.15);
  }

  private double depthM() {
    return Math.max(jawHeightM, gripM);
  }

  private Ink ink(boolean sure, Ink full) {
    return sure ? full : Ink.GHOST;
  }

  private String draw() {
    drawVise();
    drawStock();
    known.packing().forEach(this::drawPacking);
    drawCutter();
    dimension();
    return svg.render();
  }

  private double faceM(JawSide side) {
    return thicknessM / 2 + known.packingM(side);
  }

  private void drawVise() {
    boolean sure = known.vise() != null;
    double fixed = paper.x(faceM(JawSide.FIXED));
    double movable = paper.x(-faceM(JawSide.MOVABLE));
    double bottom = paper.y(-depthM());
    Ink outline = ink(sure, Ink.VISE);
    svg.rect(outline, "fixed-jaw", fixed, paper.y(0), fixed + JAW, paper.y(-jawHeightM));
    svg.rect(outline, "movable-jaw", movable - JAW, paper.y(0), movable, paper.y(-jawHeightM));
    svg.rect(outline, "bed", movable - JAW, bottom, fixed + JAW, bottom + BED);
    if (sure) {
      svg.hatch(fixed, paper.y(0), fixed + JAW, paper.y(-jawHeightM), true);
    }
    svg.text(fixed + 4, bottom + BED + 16, Anchor.START, words.apply("sketch.fixed"));
    svg.text(movable - 4, bottom + BED + 16, Anchor.END, words.apply("sketch.movable"));
  }

  private void drawStock() {
    boolean sure = known.thicknessM() != null && known.heightM() != null;
    double half = thicknessM / 2;
    svg.rect(
        ink(sure, Ink.STOCK),
        "stock",
        paper.x(-half),
        paper.y(stickOutM),
        paper.x(half),
        paper.y(-gripM));
  }

  private void drawPacking(Packing piece) {
    double side = piece.side() == JawSide.FIXED ? 1 : -1;
    double x = paper.x(side * (thicknessM + piece.sizeM()) / 2);
    double radius = Math.max(1.5, paper.size(piece.sizeM() / 2));
    svg.circle(Ink.PACKING, "packing", x, paper.y(-piece.depthM()), radius);
  }

  private void drawCutter() {
    boolean sure = known.cutter() != null && known.offsetM() != null;
    double y = or(known.offsetM(), 0);
    double end = paper.y(stickOutM - or(known.axialDepthM(), 0));
    double half = Math.min(paper.size(cutterM / 2), WIDTH / 2 - 10);
    double at = paper.x(y);
    double top = Math.max(4, paper.y(topM()));
    svg.polyline(
        ink(sure, Ink.CUTTER),
        "cutter",
        at - half,
        top,
        at - half,
        end,
        at + half,
        end,
        at + half,
        top);
  }

  private void dimension() {
    Dimensions dimensions = new Dimensions(svg);
    double half = thicknessM / 2;
    double right = paper.x(faceM(JawSide.FIXED)) + JAW;
    Double stock = known.heightM();
    Double grip = known.gripDepthM();
    Double out = stock == null || grip == null ? null : (Double) stickOutM;
    dimensions.vertical(
        right + 12, paper.x(half) + 2, paper.y(0), paper.y(stickOutM), number(out, "out"), true);
    dimensions.vertical(
        right + 12, paper.x(half) + 2, paper.y(0), paper.y(-gripM), number(grip, "grip"), true);
    double left = paper.x(-faceM(JawSide.MOVABLE)) - JAW;
    dimensions.vertical(
        left - 12,
        paper.x(-half) - 2,
        paper.y(stickOutM),
        paper.y(-gripM),
        number(stock, "high"),
        false);
    double foot = height - FOOT + 28;
    String thick = number(known.thicknessM(), "thick");
    String cutter = number(known.cutter() == null ? null : (Double) cutterM, "cutter");
    svg.text(WIDTH / 2, foot + 14, Anchor.MIDDLE, thick + ", " + number(known.lengthM(), "long"));
    svg.text(
        WIDTH / 2, foot + 31, Anchor.MIDDLE, cutter + ", " + number(known.axialDepthM(), "deep"));
    svg.text(WIDTH / 2, foot + 48, Anchor.MIDDLE, words.apply("sketch.key"));
  }

  private String number(@Nullable Double metres, String what) {
    String size = metres == null ? "?" : figures.length(metres);
    return size + " " + words.apply("sketch." + what);
  }

  private String description() {
    return String.join(
        ", ",
        number(known.thicknessM(), "thick"),
        number(known.lengthM(), "long"),
        number(known.heightM(), "high"),
        number(known.gripDepthM(), "grip"),
        number(known.axialDepthM(), "deep"));
  }
}
