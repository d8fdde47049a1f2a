package org.standproud.mechanics.force;

import org.standproud.setup.Band;

/** A law of cutting force with its bands. */
public sealed interface ForceModel {

  /** The law at one end of its bands; every force of it grows from low to high. */
  EdgeLaw law(BandEnd end);

  /**
   * The split at one end. Low is the least thrust normal to the edge with the greatest lift, high
   * the greatest thrust with the least lift: between them the force spans its range, since lift and
   * thrust pull the work opposite ways along the axis.
   */
  ForceSplit split(BandEnd end);

  /** Likely force normal to the edge over tangential force, without unit. */
  double likelyNormalRatio();

  /**
   * Kienzle's law with ratios for the other directions.
   *
   * @param specificForcePa kc1.1 in Pa
   * @param exponent mc
   * @param factor product of the corrections K, without unit, over zero
   * @param normalRatio normal to tangential force, without unit
   * @param liftRatio along-edge to tangential force, without unit, positive lifts the work
   */
  record Kienzle(Band specificForcePa, Band exponent, Band factor, Band normalRatio, Band liftRatio)
      implements ForceModel {

    @Override
    public EdgeLaw law(BandEnd end) {
      ThinChip thin =
          switch (end) {
            case LOW -> ThinChip.FROZEN;
            case LIKELY -> ThinChip.AS_WRITTEN;
            case HIGH -> ThinChip.FLOORED;
          };
      return new KienzleLaw(end.of(specificForcePa) * end.of(factor), end.of(exponent), thin);
    }

    @Override
    public ForceSplit split(BandEnd end) {
      return new ForceSplit(end.of(normalRatio), end.opposite().of(liftRatio));
    }

    @Override
    public double likelyNormalRatio() {
      return normalRatio.likely();
    }
  }

  /**
   * The linear-edge law with published or measured coefficients.
   *
   * @param coefficients the six constants
   * @param factor on all of them, without unit, over zero
   * @param along on the two along the edge, without unit, positive lifts the work
   */
  record LinearEdge(CuttingCoefficients coefficients, Band factor, Band along)
      implements ForceModel {

    /** The coefficients as they are, for a cutter with the helix they were measured with. */
    public LinearEdge(CuttingCoefficients coefficients, Band factor) {
      this(coefficients, factor, Band.exactly(1));
    }

    @Override
    public EdgeLaw law(BandEnd end) {
      return new LinearEdgeLaw(coefficients, end.of(factor));
    }

    @Override
    public ForceSplit split(BandEnd end) {
      return new ForceSplit(1, end.opposite().of(along));
    }

    @Override
    public double likelyNormalRatio() {
      return coefficients.radialChipPa() / coefficients.tangentialChipPa();
    }
  }
}
