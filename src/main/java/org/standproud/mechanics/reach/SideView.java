package org.standproud.mechanics.reach;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.util.FastMath;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Cutter;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Packing;
import org.standproud.setup.Setup;

/**
 * The pass seen along X: cutter, holder, jaws and stock in the plane of Y and Z.
 *
 * <p>The stock stands whole, as it does ahead of the cutter: what is above the edges must clear it.
 * The cutter goes past the whole length of the stock and of the jaws, so what overlaps in this view
 * meets somewhere on the way. Bodies are outlines of revolution about the cutter axis and boxes,
 * the body of a cutter as wide as its edges at their top; the vise is a jaw on each side reaching
 * {@value #JAW_BLOCK_M} m outward, at jaw height. Coordinates are rounded to a nanometre so that
 * faces that touch do not count as overlapping.
 */
final class SideView {

  /** How far a jaw with what is behind it reaches outward at jaw height, in m. */
  static final double JAW_BLOCK_M = 0.2;

  private static final GeometryFactory NANOMETRES = new GeometryFactory(new PrecisionModel(1e9));

  private final Map<Body, Geometry> moving = new EnumMap<>(Body.class);
  private final Map<Body, Geometry> standing = new EnumMap<>(Body.class);

  SideView(Setup setup) {
    double endZ = setup.stickOutM() - setup.cut().axialDepthM();
    placeCutter(setup.cutter(), setup.cut().offsetM(), endZ);
    placeJaws(setup.hold(), setup.stock().thicknessM());
    double halfThickness = setup.stock().thicknessM() / 2;
    standing.put(
        Body.STOCK,
        box(-halfThickness, halfThickness, -setup.hold().gripDepthM(), setup.stickOutM()));
  }

  /** Every pair of a moving and a standing body that must not meet. */
  List<Clearance> clearances() {
    List<Clearance> clearances = new ArrayList<>();
    moving.forEach(
        (mover, outline) ->
            standing.forEach(
                (stander, block) -> {
                  if (mover != Body.CUTTING_PART || stander != Body.STOCK) {
                    clearances.add(new Clearance(mover, stander, marginM(outline, block)));
                  }
                }));
    return clearances;
  }

  private void placeCutter(Cutter cutter, double axisY, double endZ) {
    double body = FastMath.min(cutter.fluteLengthM(), cutter.stickOutM());
    double edges = FastMath.min(cutter.greatestDepthM(), body);
    OutsideValidity.within("length of the edges", edges, 1e-5, 1, "m");
    OutsideValidity.within("entering angle", cutter.enteringAngleRad(), 0.05, 1.75, "rad");
    OutsideValidity.within("cutter diameter", cutter.diameterM(), 1e-4, 1, "m");
    OutsideValidity.within("overhang", cutter.overhangM(), cutter.stickOutM(), 2, "m");
    double flare = 2 * edges / FastMath.tan(cutter.enteringAngleRad());
    double bodyDiameter = cutter.diameterM() + FastMath.max(0, flare);
    round(Body.CUTTING_PART, axisY, cutter.diameterM(), endZ, edges);
    round(Body.CUTTER_BODY, axisY, bodyDiameter, endZ + edges, body - edges);
    round(Body.SHANK, axisY, cutter.shankDiameterM(), endZ + body, cutter.stickOutM() - body);
    round(
        Body.HOLDER,
        axisY,
        cutter.holderDiameterM(),
        endZ + cutter.stickOutM(),
        cutter.overhangM() - cutter.stickOutM());
  }

  private void placeJaws(Hold hold, double thicknessM) {
    double fixedY = thicknessM / 2 + packingM(hold, JawSide.FIXED);
    double movableY = -thicknessM / 2 - packingM(hold, JawSide.MOVABLE);
    double bottom = -hold.vise().jawHeightM();
    standing.put(Body.FIXED_JAW, box(fixedY, fixedY + JAW_BLOCK_M, bottom, 0));
    standing.put(Body.MOVABLE_JAW, box(movableY - JAW_BLOCK_M, movableY, bottom, 0));
  }

  /** Thickness of what lies between the stock and one jaw in m. */
  static double packingM(Hold hold, JawSide side) {
    return hold.packing().stream()
        .filter(piece -> piece.side() == side)
        .mapToDouble(Packing::sizeM)
        .max()
        .orElse(0);
  }

  private void round(Body body, double axisY, double diameterM, double fromZ, double lengthM) {
    if (lengthM > 0) {
      double radius = diameterM / 2;
      moving.put(body, box(axisY - radius, axisY + radius, fromZ, fromZ + lengthM));
    }
  }

  private static double marginM(Geometry outline, Geometry block) {
    if (!outline.getEnvelopeInternal().intersects(block.getEnvelopeInternal())) {
      return outline.distance(block);
    }
    Geometry overlap = outline.intersection(block);
    if (overlap.getArea() <= 0) {
      return outline.distance(block);
    }
    Envelope common = overlap.getEnvelopeInternal();
    return -FastMath.min(common.getWidth(), common.getHeight());
  }

  private static Geometry box(double fromY, double toY, double fromZ, double toZ) {
    PrecisionModel rounding = NANOMETRES.getPrecisionModel();
    return NANOMETRES.toGeometry(
        new Envelope(
            rounding.makePrecise(fromY),
            rounding.makePrecise(toY),
            rounding.makePrecise(fromZ),
            rounding.makePrecise(toZ)));
  }
}
