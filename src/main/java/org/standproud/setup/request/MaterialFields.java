package org.standproud.setup.request;

import static org.standproud.setup.units.QuantityKind.CUTTING_SPEED;
import static org.standproud.setup.units.QuantityKind.DENSITY;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.MODULUS;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.STRESS;

import java.util.List;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.ForceCoefficients;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.MaterialGroup;

/** The fields of a stock material. */
public final class MaterialFields {

  public static final Quantity<CuttingRange> LEAST_SPEED =
      Quantity.of(
          "leastSpeed",
          CUTTING_SPEED,
          1.0 / 60,
          3000.0 / 60,
          CuttingRange::leastSpeedMPerS,
          "least published cutting speed v_c");
  public static final Quantity<CuttingRange> GREATEST_SPEED =
      Quantity.of(
          "greatestSpeed",
          CUTTING_SPEED,
          1.0 / 60,
          3000.0 / 60,
          CuttingRange::greatestSpeedMPerS,
          "greatest published cutting speed v_c");
  public static final Quantity<CuttingRange> LEAST_FEED =
      Quantity.of(
          "leastFeedPerTooth",
          LENGTH,
          1e-6,
          2e-3,
          CuttingRange::leastFeedPerToothM,
          "least published feed per tooth f_z");
  public static final Quantity<CuttingRange> GREATEST_FEED =
      Quantity.of(
          "greatestFeedPerTooth",
          LENGTH,
          1e-6,
          2e-3,
          CuttingRange::greatestFeedPerToothM,
          "greatest published feed per tooth f_z");
  static final ObjectSchema<CuttingRange> RANGE =
      new ObjectSchema<>(
          "range of cutting data",
          List.of(LEAST_SPEED, GREATEST_SPEED, LEAST_FEED, GREATEST_FEED),
          (v, place) -> {
            OrderCheck.check(v, LEAST_SPEED, GREATEST_SPEED, place);
            OrderCheck.check(v, LEAST_FEED, GREATEST_FEED, place);
          });

  public static final Text<Material> NAME =
      new Text<>("name", 80, true, Material::name, "name in the catalogue");
  public static final Choice<Material, MaterialGroup> GROUP =
      Choice.of("group", MaterialGroup.class, Material::group, "ISO 513 group");
  public static final BandField<Material> SPECIFIC_FORCE =
      BandField.of(
          "specificCuttingForce",
          STRESS,
          50e6,
          10e9,
          Material::specificCuttingForcePa,
          "kc1.1, main cutting force per chip section of 1 mm by 1 mm");
  public static final BandField<Material> CHIP_EXPONENT =
      BandField.of(
          "chipExponent", NUMBER, 0, 0.6, Material::chipExponent, "mc, the Kienzle exponent");
  public static final BandField<Material> MODULUS_E =
      BandField.of(
          "youngsModulus", MODULUS, 1e9, 800e9, Material::youngsModulusPa, "modulus of elasticity");
  public static final Quantity<Material> POISSON =
      Quantity.of("poissonsRatio", NUMBER, 0, 0.49, Material::poissonsRatio, "Poisson's ratio");
  public static final Quantity<Material> DENSITY_RHO =
      Quantity.of("density", DENSITY, 500, 25_000, Material::densityKgPerM3, "density");
  public static final BandField<Material> YIELD =
      BandField.of("yield", STRESS, 5e6, 4e9, Material::yieldPa, "yield or 0.2 % proof stress");
  public static final Quantity<Material> HARDNESS =
      Quantity.<Material>of(
              "hardness", NUMBER, 5, 900, Material::hardnessBrinell, "Brinell hardness")
          .mayBeUnknown();
  public static final ObjectField<Material, CuttingRange> HSS =
      ObjectField.of("hss", RANGE, Material::hss, "cutting data for high-speed steel");
  public static final ObjectField<Material, CuttingRange> CARBIDE =
      ObjectField.of("carbide", RANGE, Material::carbide, "cutting data for cemented carbide");
  public static final Text<Material> SOURCE =
      new Text<>("source", 400, true, Material::source, "where the row was read, and how surely");

  public static final Choice<Material, ForceCoefficients> FORCE_COEFFICIENTS =
      Choice.<Material, ForceCoefficients>of(
              "forceCoefficients",
              ForceCoefficients.class,
              Material::forceCoefficients,
              "what the cutting force is worked out from: kienzle (specificCuttingForce and"
                  + " chipExponent) if left out, or one published set of mechanistic coefficients")
          .mayBeUnknown();

  static final ObjectSchema<Material> SHAPE =
      new ObjectSchema<>(
          "material",
          List.of(
              NAME,
              GROUP,
              SPECIFIC_FORCE,
              CHIP_EXPONENT,
              MODULUS_E,
              POISSON,
              DENSITY_RHO,
              YIELD,
              HARDNESS,
              HSS,
              CARBIDE,
              SOURCE,
              FORCE_COEFFICIENTS));

  private MaterialFields() {}

  static Material material(Values v) {
    return MaterialBuilder.builder()
        .name(v.need(NAME))
        .group(v.need(GROUP))
        .specificCuttingForcePa(v.need(SPECIFIC_FORCE))
        .chipExponent(v.need(CHIP_EXPONENT))
        .youngsModulusPa(v.need(MODULUS_E))
        .poissonsRatio(v.need(POISSON))
        .densityKgPerM3(v.need(DENSITY_RHO))
        .yieldPa(v.need(YIELD))
        .hardnessBrinell(v.get(HARDNESS))
        .hss(range(v.need(HSS)))
        .carbide(range(v.need(CARBIDE)))
        .source(v.need(SOURCE))
        .forceCoefficients(v.get(FORCE_COEFFICIENTS))
        .build();
  }

  private static CuttingRange range(Values v) {
    return new CuttingRange(
        v.need(LEAST_SPEED), v.need(GREATEST_SPEED), v.need(LEAST_FEED), v.need(GREATEST_FEED));
  }
}
