package org.standproud.mechanics.force;

import org.standproud.setup.Band;

/**
 * A law of cutting force as {@link ForceShapes} asks it: what its shapes are worked out along, and
 * what a draw makes of a shape.
 */
sealed interface ShapedLaw {

  /** Index of the first of two numbers of a shape that the law fills for the force upright. */
  int UPRIGHT = 4;

  static ShapedLaw of(ForceModel model, double edgeCosine) {
    return model instanceof ForceModel.LinearEdge linear
        ? new LinearEdge(linear)
        : new Kienzle((ForceModel.Kienzle) model, edgeCosine);
  }

  /** Exponents to work shapes out at. */
  Band exponent();

  /** What is split between the directions: worked out at a few places of this band. */
  Band share();

  /** The share that a draw names. */
  double share(ForceDraw draw);

  /** The split at one share. */
  ForceSplit split(double share);

  /** The law at unit force. */
  EdgeLaw law(double exponent);

  /** The force of a tooth at a chip in m, up to a constant: shapes are worked out over it. */
  double unit(double exponent, double chipM);

  /** What multiplies a shape. */
  double force(ForceDraw draw);

  /** Takes what the law needs for the force upright from a sweep into a shape. */
  void takeUpright(ForceExtremes sweep, double[] shape, int at);

  /** Least and greatest force upright over {@link #force}. */
  double[] upright(double[] shape, ForceDraw draw);

  /**
   * Kienzle's law: in proportion to K kc1.1; upright the sum of the tangential forces times lift
   * less thrust.
   *
   * @param model the law
   * @param edgeCosine cos(kappa_e) of the edge in cut
   */
  record Kienzle(ForceModel.Kienzle model, double edgeCosine) implements ShapedLaw {
    private static final double UNIT_PA = 1e9;

    @Override
    public Band exponent() {
      return model.exponent();
    }

    @Override
    public Band share() {
      return model.normalRatio();
    }

    @Override
    public double share(ForceDraw draw) {
      return draw.normalRatio();
    }

    @Override
    public ForceSplit split(double share) {
      return new ForceSplit(share, 0);
    }

    @Override
    public EdgeLaw law(double exponent) {
      return new KienzleLaw(UNIT_PA, exponent, ThinChip.FLOORED);
    }

    @Override
    public double unit(double exponent, double chipM) {
      return Math.pow(chipM * 1e3, 1 - exponent);
    }

    @Override
    public double force(ForceDraw draw) {
      return draw.specificForcePa() / UNIT_PA;
    }

    @Override
    public void takeUpright(ForceExtremes sweep, double[] shape, int at) {
      int tangential = at + UPRIGHT;
      shape[tangential] = Math.max(shape[tangential], sweep.greatestN(ForceExtremes.TANGENTIAL));
    }

    @Override
    public double[] upright(double[] shape, ForceDraw draw) {
      double upright = (draw.liftRatio() - draw.normalRatio() * edgeCosine) * shape[UPRIGHT];
      return new double[] {Math.min(0, upright), Math.max(0, upright)};
    }
  }

  /**
   * The linear-edge law: in proportion to the factor on its coefficients; upright a convex function
   * of the factor along the edge, so chords again are never too little.
   *
   * @param model the law
   */
  record LinearEdge(ForceModel.LinearEdge model) implements ShapedLaw {

    @Override
    public Band exponent() {
      return Band.exactly(0);
    }

    @Override
    public Band share() {
      return model.along();
    }

    @Override
    public double share(ForceDraw draw) {
      return draw.liftRatio();
    }

    @Override
    public ForceSplit split(double share) {
      return new ForceSplit(1, share);
    }

    @Override
    public EdgeLaw law(double exponent) {
      return new LinearEdgeLaw(model.coefficients(), 1);
    }

    @Override
    public double unit(double exponent, double chipM) {
      CuttingCoefficients set = model.coefficients();
      return set.tangentialChipPa() * chipM + set.tangentialEdgeNPerM();
    }

    @Override
    public double force(ForceDraw draw) {
      return draw.specificForcePa();
    }

    @Override
    public void takeUpright(ForceExtremes sweep, double[] shape, int at) {
      int least = at + UPRIGHT;
      shape[least] = Math.min(shape[least], sweep.leastN(ForceExtremes.Z));
      shape[least + 1] = Math.max(shape[least + 1], sweep.greatestN(ForceExtremes.Z));
    }

    @Override
    public double[] upright(double[] shape, ForceDraw draw) {
      return new double[] {shape[UPRIGHT], shape[UPRIGHT + 1]};
    }
  }
}
