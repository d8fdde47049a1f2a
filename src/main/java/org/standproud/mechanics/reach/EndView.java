package org.standproud.mechanics.reach;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;

/**
 * The pass seen along X: cutter, holder, jaws and stock in the plane of Y and Z.
 *
 * <p>The stock stands whole, as it does ahead of the cutter: what is above the edges must clear it.
 * The cutter goes past the whole length of the stock and of the jaws, so what overlaps in this view
 * meets somewhere on the way. Bodies are outlines of revolution about the cutter axis and boxes;
 * the vise is a jaw on each side reaching {@value #JAW_BLOCK_M} m outward, at jaw height.
 */
final class EndView {

  /** How far a jaw with what is behind it reaches outward at jaw height, in m. */
  static final double JAW_BLOCK_M = 0.2;

  private final Map<Body, Envelope> moving = new EnumMap<>(Body.class);
  private final Map<Body, Envelope> standing = new EnumMap<>(Body.class);

  EndView(Setup setup) {
    double endZ = setup.stickOutM() - setup.cut().axialDepthM();
    double axisY = setup.cut().offsetM();
    for (CutterPart part : CutterPart.of(setup.cutter(), endZ)) {
      moving.put(part.body(), outline(part, axisY));
    }
    placeJaws(setup.hold(), setup.stock().thicknessM());
    double halfThickness = setup.stock().thicknessM() / 2;
    standing.put(
        Body.STOCK,
        Outline.box(-halfThickness, halfThickness, -setup.hold().gripDepthM(), setup.stickOutM()));
  }

  /** A part of cutter and holder about an axis at a place across the stock in m. */
  static Envelope outline(CutterPart part, double axisY) {
    double radius = part.diameterM() / 2;
    return Outline.box(axisY - radius, axisY + radius, part.fromZ(), part.toZ());
  }

  /** Every pair of a moving and a standing body that must not meet. */
  List<Clearance> clearances() {
    List<Clearance> clearances = new ArrayList<>();
    moving.forEach(
        (mover, outline) ->
            standing.forEach(
                (stander, block) -> {
                  if (mover != Body.CUTTING_PART || stander != Body.STOCK) {
                    clearances.add(new Clearance(mover, stander, Outline.marginM(outline, block)));
                  }
                }));
    return clearances;
  }

  private void placeJaws(Hold hold, double thicknessM) {
    double fixedY = thicknessM / 2 + hold.packingM(JawSide.FIXED);
    double movableY = -thicknessM / 2 - hold.packingM(JawSide.MOVABLE);
    double bottom = -hold.vise().jawHeightM();
    standing.put(Body.FIXED_JAW, Outline.box(fixedY, fixedY + JAW_BLOCK_M, bottom, 0));
    standing.put(Body.MOVABLE_JAW, Outline.box(movableY - JAW_BLOCK_M, movableY, bottom, 0));
  }
}
