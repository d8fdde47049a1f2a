package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.Material;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.MaterialFields;

/**
 * The linear-edge law of one published set for one stock and one cutter, as bands.
 *
 * <ul>
 *   <li>Scatter: at a chip of 0.1 mm the four sets for 7075 (table 5 of Chin. J. Mech. Eng. 2021,
 *       doi 10.1186/s10033-021-00536-9) give tangential forces of 0.74 to 1.44 times their middle;
 *       any set is taken as 0.7 to 1.45 of itself, in quadrature with the wear of the edge. An edge
 *       that is not given keeps its whole range.
 *   <li>Another cutting material than the set was measured with: the factor 1.1 to 1.44 of
 *       high-speed steel over carbide, or its inverse.
 *   <li>Along the edge: the helix of the cutters is not printed and is taken as 30 degrees. The
 *       axial terms go with tan(helix), or stay as printed; the band spans both, and turns its sign
 *       with the hand of the helix. A set without axial terms takes the share of the tangential
 *       force that {@link CorrectedKienzle} takes.
 *   <li>Another group of stock: the band of all forces is stretched until it holds those of
 *       Kienzle's law for that stock, tangential and normal, at chips of 0.02 and 0.3 mm; the
 *       likely value stays that of the set.
 * </ul>
 *
 * @param model the law with its bands
 * @param assumptions what was assumed
 */
record PublishedForce(ForceModel.LinearEdge model, List<Assumption> assumptions) {

  private static final Field<?, ?> INPUT = MaterialFields.FORCE_COEFFICIENTS;
  private static final String SOURCE =
      "table 5 of Chin. J. Mech. Eng. 2021, doi 10.1186/s10033-021-00536-9";

  static final Band SCATTER = new Band(0.7, 1, 1.45);
  private static final double MEASURED_TAN_HELIX = Math.tan(Math.toRadians(30));
  private static final double[] CHIPS_M = {0.02e-3, 0.3e-3};

  PublishedForce {
    assumptions = List.copyOf(assumptions);
  }

  static PublishedForce of(
      PublishedCoefficients set, Material material, Cutter cutter, CorrectedKienzle kienzle) {
    List<Assumption> assumptions = new ArrayList<>(kienzle.assumptions());
    assumptions.add(
        new Assumption(
            INPUT,
            "published sets for one stock differ: the set is taken as 0.7 to 1.45 of itself",
            SOURCE));
    Band wear = CorrectedKienzle.wear(cutter.edge());
    Band factor = cutter.edge() == null ? SCATTER.times(wear) : InQuadrature.product(SCATTER, wear);
    factor = factor.times(otherTool(set, cutter, assumptions));
    CuttingCoefficients coefficients = withAxial(set, assumptions);
    if (material.group() != set.group()) {
      factor = stretched(factor, coefficients, kienzle.model());
      assumptions.add(foreign(set, material));
    }
    Band along = along(set, cutter.helixRad());
    return new PublishedForce(new ForceModel.LinearEdge(coefficients, factor, along), assumptions);
  }

  private static Band otherTool(
      PublishedCoefficients set, Cutter cutter, List<Assumption> assumptions) {
    if (cutter.toolMaterial() == set.tool()) {
      return Band.exactly(1);
    }
    assumptions.add(
        new Assumption(
            INPUT,
            "the set was measured with "
                + set.tool().words()
                + ", not "
                + cutter.toolMaterial().words()
                + ": hss takes 1.1 to 1.44 of the force of carbide",
            "factors from German textbooks, from memory"));
    return cutter.toolMaterial() == ToolMaterial.HSS
        ? CorrectedKienzle.HSS
        : Band.exactly(1).over(CorrectedKienzle.HSS);
  }

  private static CuttingCoefficients withAxial(
      PublishedCoefficients set, List<Assumption> assumptions) {
    CuttingCoefficients printed = set.coefficients();
    assumptions.add(
        new Assumption(
            INPUT,
            set.axialKnown()
                ? "the helix of the cutters is not printed: taken as 30 degrees, and the force along"
                    + " the edge as in proportion to tan(helix) or as printed"
                : "the set has no axial terms: along the edge 0.1 to 0.8 tan(helix) of the tangential"
                    + " force",
            set.axialKnown() ? "own guess, no source" : "span of the other published sets"));
    if (set.axialKnown()) {
      return printed;
    }
    double share = CorrectedKienzle.LIFT_PER_TAN_HELIX.likely() * MEASURED_TAN_HELIX;
    return new CuttingCoefficients(
        printed.tangentialChipPa(),
        printed.tangentialEdgeNPerM(),
        printed.radialChipPa(),
        printed.radialEdgeNPerM(),
        share * printed.tangentialChipPa(),
        share * printed.tangentialEdgeNPerM());
  }

  /** Factor on the force along the edge; positive lifts the work. */
  private static Band along(PublishedCoefficients set, double helixRad) {
    double turned = Math.tan(helixRad) / MEASURED_TAN_HELIX;
    if (set.axialKnown()) {
      return Band.spanning(turned, helixRad < 0 ? -1 : 1);
    }
    Band share = CorrectedKienzle.LIFT_PER_TAN_HELIX;
    return share.times(turned / share.likely());
  }

  /** The factor, wide enough to hold the forces of Kienzle's law as well. */
  private static Band stretched(Band factor, CuttingCoefficients set, ForceModel.Kienzle kienzle) {
    double low = factor.low();
    double high = factor.high();
    for (double chipM : CHIPS_M) {
      double tangential = set.tangentialChipPa() * chipM + set.tangentialEdgeNPerM();
      double normal = set.radialChipPa() * chipM + set.radialEdgeNPerM();
      double least = kienzle.law(BandEnd.LOW).shape(0, chipM);
      double most = kienzle.law(BandEnd.HIGH).shape(0, chipM);
      low = Math.min(low, least / tangential);
      low = Math.min(low, least * kienzle.normalRatio().low() / normal);
      high = Math.max(high, most / tangential);
      high = Math.max(high, most * kienzle.normalRatio().high() / normal);
    }
    return new Band(low, factor.likely(), high);
  }

  private static Assumption foreign(PublishedCoefficients set, Material material) {
    return new Assumption(
        INPUT,
        "the set was measured in ISO 513 group "
            + set.group().words()
            + ", the stock is of group "
            + material.group().words()
            + ": the band is stretched to hold the forces of Kienzle's law for the stock",
        "own rule, no source",
        "coefficients measured in this stock, or leave them out: kienzle");
  }
}
