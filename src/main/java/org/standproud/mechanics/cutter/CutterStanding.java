package org.standproud.mechanics.cutter;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Material;
import org.standproud.setup.request.CutterFields;

/**
 * How a cutter stands one pass.
 *
 * @param deflectionM deflection of the cutting end under the peak force in m: cutter, holder and
 *     spindle together
 * @param stiffnessNPerM stiffness of the cutting end in N/m
 * @param bendingStressPa greatest bending stress outside the holder under the peak force in Pa
 * @param strengthOverStress transverse rupture strength over that stress, not above {@value
 *     #UNLOADED}; below 1 the cutter breaks; for an arbor the steel of the arbor is judged
 * @param overhangRatio stick-out from the holder over the lesser of cutting and shank diameter
 * @param cuttingSpeedMPerS v_c = pi D n in m/s
 * @param speed cutting speed against the published range
 * @param feed feed per tooth against the published range
 * @param chipOverLeast thickest chip over the least that is cut; below 1 the edge rubs
 * @param assumptions what was assumed
 */
public record CutterStanding(
    Band deflectionM,
    Band stiffnessNPerM,
    Band bendingStressPa,
    Band strengthOverStress,
    double overhangRatio,
    double cuttingSpeedMPerS,
    PublishedRange speed,
    PublishedRange feed,
    Band chipOverLeast,
    List<Assumption> assumptions) {

  /** Strength over stress of a cutter that is hardly loaded; greater values are written so. */
  public static final double UNLOADED = 1000;

  /** Yield of arbor steel in Pa: alloy steel, normalised or better; common practice, no source. */
  public static final Band ARBOR_YIELD_PA = new Band(600e6, 800e6, 1000e6);

  /** Copies the list. */
  public CutterStanding {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * Computes all of it.
   *
   * @param cutter the cutter
   * @param cut the pass
   * @param material the stock material
   * @param spindleStiffnessNPerM stiffness of the spindle at its nose in N/m
   * @param peakForceN greatest resultant force across the cutter axis over a revolution in N, not
   *     negative
   * @param feedPerToothM f_z in m that the teeth see, hand feed counted
   * @param thickestChipM thickest chip a tooth meets in m
   * @throws OutsideValidity if an input is out of the range of its formula
   */
  public static CutterStanding of(
      Cutter cutter,
      Cut cut,
      Material material,
      Band spindleStiffnessNPerM,
      Band peakForceN,
      Band feedPerToothM,
      Band thickestChipM) {
    Band compliance = complianceMPerN(cutter, spindleStiffnessNPerM);
    ToolStrength tool = ToolStrength.of(cutter.toolMaterial());
    SteppedCantilever beam = CutterBeam.outsideHolder(cutter, tool.modulusPa().likely());
    Band stress = peakForceN.map(beam::bendingStressPa);
    boolean endMill = cutter.kind() == CutterKind.END_MILL;
    double speed = FastMath.PI * cutter.diameterM() * cut.spindleSpeedRevPerS();
    CuttingRange range = material.rangeFor(cutter.toolMaterial());
    return new CutterStanding(
        compliance.times(peakForceN),
        compliance.map(c -> 1 / c),
        stress,
        strengthOverStress(endMill ? tool.ruptureStrengthPa() : ARBOR_YIELD_PA, stress),
        cutter.stickOutM() / FastMath.min(cutter.diameterM(), cutter.shankDiameterM()),
        speed,
        PublishedRange.of(
            "cutting speed",
            Band.exactly(speed),
            range.leastSpeedMPerS(),
            range.greatestSpeedMPerS()),
        PublishedRange.of(
            "feed per tooth",
            feedPerToothM,
            range.leastFeedPerToothM(),
            range.greatestFeedPerToothM()),
        LeastChip.chipOverLeast(
            thickestChipM, EdgeRounding.growth(cutter.edge()).times(cutter.edgeRadiusM())),
        assumptions(cutter));
  }

  private static Band complianceMPerN(Cutter cutter, Band spindleStiffnessNPerM) {
    Band beam =
        ToolStrength.of(cutter.toolMaterial())
            .modulusPa()
            .map(modulus -> CutterBeam.toNose(cutter, modulus).complianceMPerN());
    return beam.plus(SpindleCompliance.atTipMPerN(spindleStiffnessNPerM, cutter.overhangM()));
  }

  private static Band strengthOverStress(Band strengthPa, Band stressPa) {
    Band floored = stressPa.map(s -> FastMath.max(s, strengthPa.high() / UNLOADED));
    return strengthPa.over(floored).map(ratio -> FastMath.min(ratio, UNLOADED));
  }

  /** What is assumed of a cutter. */
  public static List<Assumption> assumptions(Cutter cutter) {
    boolean endMill = cutter.kind() == CutterKind.END_MILL;
    List<Assumption> assumptions = new ArrayList<>();
    assumptions.add(SpindleCompliance.TILT);
    assumptions.add(EdgeRounding.ASSUMPTION);
    assumptions.add(
        new Assumption(
            CutterFields.EDGE_RADIUS,
            "an edge cuts chips thicker than 0.2 to 0.4 of its rounding",
            "micro-milling literature, from memory"));
    if (!endMill) {
      assumptions.add(
          new Assumption(
              CutterFields.SHANK,
              "the arbor is steel with a yield stress of 600 to 1000 MPa",
              "common practice, no source"));
    }
    return assumptions;
  }
}
