package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * A stock material.
 *
 * @param name catalogue name
 * @param group ISO 513 group
 * @param specificCuttingForcePa kc1.1, the main cutting force per chip section of 1 mm by 1 mm, in
 *     Pa
 * @param chipExponent mc, the Kienzle exponent, without unit
 * @param youngsModulusPa E in Pa
 * @param poissonsRatio nu, without unit
 * @param densityKgPerM3 density in kg/m3
 * @param yieldPa yield or 0.2 % proof stress in Pa
 * @param hardnessBrinell Brinell hardness, if known
 * @param hss what HSS cutters may do in it
 * @param carbide what carbide cutters may do in it
 * @param source where the row was read, and how surely
 * @param forceCoefficients what the cutting force is worked out from; null for Kienzle's law
 */
@RecordBuilder
public record Material(
    String name,
    MaterialGroup group,
    Band specificCuttingForcePa,
    Band chipExponent,
    Band youngsModulusPa,
    double poissonsRatio,
    double densityKgPerM3,
    Band yieldPa,
    @Nullable Double hardnessBrinell,
    CuttingRange hss,
    CuttingRange carbide,
    String source,
    @Nullable ForceCoefficients forceCoefficients) {

  /** A material whose cutting force follows Kienzle's law. */
  public Material(
      String name,
      MaterialGroup group,
      Band specificCuttingForcePa,
      Band chipExponent,
      Band youngsModulusPa,
      double poissonsRatio,
      double densityKgPerM3,
      Band yieldPa,
      @Nullable Double hardnessBrinell,
      CuttingRange hss,
      CuttingRange carbide,
      String source) {
    this(
        name,
        group,
        specificCuttingForcePa,
        chipExponent,
        youngsModulusPa,
        poissonsRatio,
        densityKgPerM3,
        yieldPa,
        hardnessBrinell,
        hss,
        carbide,
        source,
        null);
  }

  /** What the cutting force is computed from: the coefficients given, else Kienzle's law. */
  public ForceCoefficients forceLaw() {
    return forceCoefficients == null ? ForceCoefficients.KIENZLE : forceCoefficients;
  }

  /** The published range for a tool material. */
  public CuttingRange rangeFor(ToolMaterial tool) {
    return tool == ToolMaterial.HSS ? hss : carbide;
  }
}
