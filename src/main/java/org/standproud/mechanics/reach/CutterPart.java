package org.standproud.mechanics.reach;

import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Cutter;

/**
 * One round part of cutter and holder. The body of a cutter is as wide as its edges at their top.
 *
 * @param body which
 * @param diameterM its diameter in m
 * @param fromZ its lower end above the jaw top in m
 * @param toZ its upper end in m
 */
record CutterPart(Body body, double diameterM, double fromZ, double toZ) {

  /**
   * The parts from the edges up to the spindle nose; those of no length are left out.
   *
   * @param cutter the cutter
   * @param endZ height of the cutting end above the jaw top in m
   * @throws OutsideValidity if a size is no cutter's
   */
  static List<CutterPart> of(Cutter cutter, double endZ) {
    double body = FastMath.min(cutter.fluteLengthM(), cutter.stickOutM());
    double edges = FastMath.min(cutter.greatestDepthM(), body);
    OutsideValidity.within("length of the edges", edges, 1e-5, 1, "m");
    OutsideValidity.within("entering angle", cutter.enteringAngleRad(), 0.05, 1.75, "rad");
    OutsideValidity.within("cutter diameter", cutter.diameterM(), 1e-4, 1, "m");
    OutsideValidity.within("overhang", cutter.overhangM(), cutter.stickOutM(), 2, "m");
    double flare = 2 * edges / FastMath.tan(cutter.enteringAngleRad());
    double bodyDiameter = cutter.diameterM() + FastMath.max(0, flare);
    double holderZ = endZ + cutter.stickOutM();
    return Stream.of(
            new CutterPart(Body.CUTTING_PART, cutter.diameterM(), endZ, endZ + edges),
            new CutterPart(Body.CUTTER_BODY, bodyDiameter, endZ + edges, endZ + body),
            new CutterPart(Body.SHANK, cutter.shankDiameterM(), endZ + body, holderZ),
            new CutterPart(
                Body.HOLDER, cutter.holderDiameterM(), holderZ, endZ + cutter.overhangM()))
        .filter(part -> part.toZ() > part.fromZ())
        .toList();
  }
}
