package org.standproud.mechanics.force;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.request.CutterFields;

/**
 * Kienzle's law for one stock and one cutter, with the corrections of the German textbooks (values
 * from memory) as bands: K = K_wear K_process K_tool K_rake.
 *
 * <ul>
 *   <li>Wear: 1.0 sharp, 1.3 to 1.5 worn.
 *   <li>Process: milling 1.2 against turning 1.0 in the textbooks; catalogue formulas apply none.
 *   <li>Tool: carbide 1.0; high-speed steel 1.2, and 1.1 to 1.2 more for its low cutting speed.
 *   <li>Rake: 1 - (gamma - gamma0)/66.7 deg with gamma0 = 6 deg, cast iron 2 deg; or 1 - gamma/100
 *       deg. The two disagree; the band spans both.
 * </ul>
 *
 * <p>The scatter of kc1.1 and of the four corrections is independent from one to the next; their
 * relative reaches are put together in quadrature ({@link InQuadrature}), for all five at their
 * worst at once does not happen in a shop. An edge state that is not given keeps its whole range.
 *
 * <p>Normal to tangential force: common practice has 0.3 to 0.5, more with a dull edge; the sets of
 * {@link PublishedCoefficients} give 0.2 to 0.7 at chips of 0.05 to 0.1 mm. Along-edge to
 * tangential force: a share of tan(helix); the published sets (K_ac/K_tc 0.04 to 0.43) are spanned
 * by shares 0.1 to 0.8 at a helix of 30 degrees, the helix of their cutters being this project's
 * guess.
 *
 * @param model the law with its bands
 * @param assumptions what was taken for inputs that are not known
 */
public record CorrectedKienzle(ForceModel.Kienzle model, List<Assumption> assumptions) {

  /** Milling against turning. */
  public static final Band MILLING = new Band(1.0, 1.1, 1.2);

  /** High-speed steel against carbide, its low cutting speed included. */
  public static final Band HSS = new Band(1.1, 1.2, 1.44);

  /** Along-edge to tangential force over tan(helix). */
  public static final Band LIFT_PER_TAN_HELIX = new Band(0.1, 0.5, 0.8);

  private static final double RAKE_SLOPE_PER_DEG = 1 / 66.7;
  private static final double CATALOGUE_RAKE_SLOPE_PER_DEG = 1 / 100.0;

  /** Copies the list. */
  public CorrectedKienzle {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The law for a stock and a cutter.
   *
   * @param material the stock
   * @param cutter the cutter
   * @throws OutsideValidity if rake or helix is out of range
   */
  public static CorrectedKienzle of(Material material, Cutter cutter) {
    List<Assumption> assumptions = new ArrayList<>();
    if (cutter.edge() == null) {
      assumptions.add(
          new Assumption(
              CutterFields.EDGE,
              "the edge may be anything from fresh to worn: force factor 1.0 to 1.5, radial to"
                  + " tangential force 0.2 to 1.0; a chipped tooth is not assumed",
              "wear factor from German textbooks, from memory; ratio common practice, no source",
              "the state of the cutting edges, with a loupe"));
    }
    Band specificForcePa = material.specificCuttingForcePa();
    Band wear = wear(cutter.edge());
    Band scatter =
        InQuadrature.product(
            specificForcePa.times(1 / specificForcePa.likely()),
            cutter.edge() == null ? Band.exactly(1) : wear,
            MILLING,
            cutter.toolMaterial() == ToolMaterial.HSS ? HSS : Band.exactly(1),
            rake(material.group(), cutter.rakeRad()));
    // An uninspected edge is not scatter: it may be either, and keeps its whole range.
    Band factor = cutter.edge() == null ? scatter.times(wear) : scatter;
    double helix =
        OutsideValidity.within(
            "helix angle", cutter.helixRad(), Math.toRadians(-60), Math.toRadians(60), "rad");
    ForceModel.Kienzle model =
        new ForceModel.Kienzle(
            Band.exactly(specificForcePa.likely()),
            material.chipExponent(),
            factor,
            normalRatio(cutter.edge()),
            LIFT_PER_TAN_HELIX.times(Math.tan(helix)));
    return new CorrectedKienzle(model, assumptions);
  }

  /** K_wear by the state of the edge; the whole range if it is not known. */
  public static Band wear(@Nullable EdgeCondition edge) {
    if (edge == null) {
      return new Band(1.0, 1.2, 1.5);
    }
    return switch (edge) {
      case FRESH -> new Band(1.0, 1.0, 1.1);
      case USED -> new Band(1.0, 1.15, 1.3);
      case WORN, CHIPPED -> new Band(1.3, 1.4, 1.5);
    };
  }

  /** Normal to tangential force by the state of the edge; the whole range if it is not known. */
  public static Band normalRatio(@Nullable EdgeCondition edge) {
    if (edge == null) {
      return new Band(0.2, 0.4, 1.0);
    }
    return switch (edge) {
      case FRESH -> new Band(0.2, 0.35, 0.7);
      case USED -> new Band(0.2, 0.4, 0.8);
      case WORN, CHIPPED -> new Band(0.3, 0.55, 1.0);
    };
  }

  /** K_rake, spanning the two published forms. */
  public static Band rake(MaterialGroup group, double rakeRad) {
    double degrees = Math.toDegrees(rakeRad);
    OutsideValidity.within("rake angle", degrees, -30, 40, "deg");
    double neutral = group == MaterialGroup.K ? 2 : 6;
    double textbook = 1 - (degrees - neutral) * RAKE_SLOPE_PER_DEG;
    double catalogue = 1 - degrees * CATALOGUE_RAKE_SLOPE_PER_DEG;
    return Band.between(Math.min(textbook, catalogue), Math.max(textbook, catalogue));
  }
}
