package org.standproud.mechanics.plate;

import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;

/**
 * The standing part of the stock, what holds its foot, and where it is loaded.
 *
 * @param stickOutM height above the jaws, 0.1 mm to 10 m
 * @param lengthM length along the jaws, m
 * @param thicknessM thickness across the jaws, m
 * @param youngPa Young's modulus, Pa
 * @param poisson Poisson's ratio
 * @param densityKgPerM3 density, kg/m3
 * @param rootTranslationNPerM2 stiffness of the hold against shift across the stock, N/m per metre
 *     of jaw
 * @param rootRotationNPerRad stiffness of the hold against tilt, N.m/rad per metre of jaw
 * @param heldLengthM length of the stock between the jaws, m, at least a tenth of the length and at
 *     most all of it; taken as central
 * @param load where the cutter acts
 */
public record PlateInput(
    double stickOutM,
    double lengthM,
    double thicknessM,
    Band youngPa,
    double poisson,
    double densityKgPerM3,
    Band rootTranslationNPerM2,
    Band rootRotationNPerRad,
    double heldLengthM,
    PlatePoint load) {

  /**
   * Refuses what is no standing stock.
   *
   * @throws OutsideValidity if a size or stiffness is out of range, or the load is not on the part
   *     above the jaws
   */
  public PlateInput {
    OutsideValidity.within("stick-out", stickOutM, 1e-4, 10, "m");
    OutsideValidity.within("stock length", lengthM, 0.05 * stickOutM, 10, "m");
    OutsideValidity.within("stock thickness", thicknessM, 1e-4, 10, "m");
    OutsideValidity.within("held length", heldLengthM, 0.1 * lengthM, lengthM, "m");
    OutsideValidity.within("load place along the stock", load.xM(), -lengthM / 2, lengthM / 2, "m");
    OutsideValidity.within("load height", load.zM(), 0, stickOutM, "m");
    withinBand("Young's modulus", youngPa, 1e8, 1e12, "Pa");
    withinBand("root translation", rootTranslationNPerM2, 1e-3, 1e18, "N/m per m");
    withinBand("root rotation", rootRotationNPerRad, 1e-3, 1e18, "N.m/rad per m");
    OutsideValidity.within("Poisson's ratio", poisson, 0, 0.49, "");
    OutsideValidity.within("density", densityKgPerM3, 100, 25000, "kg/m3");
  }

  private static void withinBand(String name, Band band, double least, double most, String unit) {
    OutsideValidity.within(name, band.low(), least, most, unit);
    OutsideValidity.within(name, band.high(), least, most, unit);
  }
}
