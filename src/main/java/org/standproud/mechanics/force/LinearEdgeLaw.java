package org.standproud.mechanics.force;

/**
 * The linear-edge law: dF_t = (K_tc h + K_te) db, and likewise radial and axial (Altintas,
 * Manufacturing Automation, 2nd ed. 2012, ch. 2; from memory). The first term is the chip, the
 * second the edge.
 *
 * @param coefficients the six constants
 * @param factor multiplies all six, without unit (wear)
 */
public record LinearEdgeLaw(CuttingCoefficients coefficients, double factor) implements EdgeLaw {

  @Override
  public int terms() {
    return 2;
  }

  @Override
  public double shape(int term, double chipM) {
    return term == 0 ? chipM : 1;
  }

  @Override
  public double tangential(int term) {
    return factor
        * (term == 0 ? coefficients.tangentialChipPa() : coefficients.tangentialEdgeNPerM());
  }

  @Override
  public double normal(int term) {
    return factor * (term == 0 ? coefficients.radialChipPa() : coefficients.radialEdgeNPerM());
  }

  @Override
  public double along(int term) {
    return factor * (term == 0 ? coefficients.axialChipPa() : coefficients.axialEdgeNPerM());
  }
}
