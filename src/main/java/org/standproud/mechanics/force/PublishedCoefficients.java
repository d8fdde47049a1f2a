package org.standproud.mechanics.force;

import java.util.Arrays;
import java.util.Optional;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.ToolMaterial;

/**
 * Coefficient sets read in table 5 of "Milling Force Model for Aviation Aluminum Alloy", Chin. J.
 * Mech. Eng. 2021, doi 10.1186/s10033-021-00536-9, named by stock, tool and the number of the paper
 * that table cites. Sets for 7075 alone span 600 to 1319 MPa in K_tc: no one of them is the truth
 * for a given shop. Two sets print no axial terms; zero stands for them here and the axial force is
 * then not known.
 */
public enum PublishedCoefficients {
  /** Al 6082-T6, carbide, cited paper 189. */
  AL_6082_T6_CARBIDE_189(
      ForceCoefficients.AL_6082_T6_CARBIDE_189,
      ToolMaterial.CARBIDE,
      CuttingCoefficients.printed(631, 13, 99, 10, 273, 2.8),
      true),
  /** Al 7075-T6, carbide, cited paper 190. */
  AL_7075_T6_CARBIDE_190(
      ForceCoefficients.AL_7075_T6_CARBIDE_190,
      ToolMaterial.CARBIDE,
      CuttingCoefficients.printed(767.01, 27.7, 168.8, 26.6, 222, 0.7),
      true),
  /** Al 6061-T6, carbide, cited paper 160; no axial terms. */
  AL_6061_T6_CARBIDE_160(
      ForceCoefficients.AL_6061_T6_CARBIDE_160,
      ToolMaterial.CARBIDE,
      CuttingCoefficients.printed(243.77, 7.53, 113.5, 7.83, 0, 0),
      false),
  /** Al 7075-T6, carbide, cited paper 160; no axial terms. */
  AL_7075_T6_CARBIDE_160(
      ForceCoefficients.AL_7075_T6_CARBIDE_160,
      ToolMaterial.CARBIDE,
      CuttingCoefficients.printed(600.46, 17.9, 180.96, 20.42, 0, 0),
      false),
  /** Al 7075, high-speed steel, cited paper 156. */
  AL_7075_HSS_156(
      ForceCoefficients.AL_7075_HSS_156,
      ToolMaterial.HSS,
      CuttingCoefficients.printed(951.365, 11.115, 262.597, 11.314, 323.33, 1.105),
      true),
  /** Al 7075, carbide, cited paper 47. */
  AL_7075_CARBIDE_47(
      ForceCoefficients.AL_7075_CARBIDE_47,
      ToolMaterial.CARBIDE,
      CuttingCoefficients.printed(1319.41, 19.65, 788.83, 26.77, 48.75, 2.05),
      true);

  private final ForceCoefficients choice;
  private final ToolMaterial tool;
  private final CuttingCoefficients coefficients;
  private final boolean axialKnown;

  PublishedCoefficients(
      ForceCoefficients choice,
      ToolMaterial tool,
      CuttingCoefficients coefficients,
      boolean axialKnown) {
    this.choice = choice;
    this.tool = tool;
    this.coefficients = coefficients;
    this.axialKnown = axialKnown;
  }

  /** The set that a choice names; empty for Kienzle's law. */
  public static Optional<PublishedCoefficients> of(ForceCoefficients choice) {
    return Arrays.stream(values()).filter(set -> set.choice == choice).findFirst();
  }

  /** How a request names it. */
  public ForceCoefficients choice() {
    return choice;
  }

  /** What the cutter it was measured with was made of. */
  public ToolMaterial tool() {
    return tool;
  }

  /** The group of the stock it was measured in. */
  public MaterialGroup group() {
    return MaterialGroup.N;
  }

  /** The set, in SI units. */
  public CuttingCoefficients coefficients() {
    return coefficients;
  }

  /** Whether the axial terms were printed. */
  public boolean axialKnown() {
    return axialKnown;
  }
}
