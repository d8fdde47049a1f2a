package org.standproud.mechanics.cutter;

import org.standproud.setup.Band;
import org.standproud.setup.ToolMaterial;

/**
 * Elastic modulus and transverse rupture strength (ISO 3327) of what cutters are made of.
 *
 * <p>HSS: E 207 to 225 GPa, rupture 3 to 4.5 GPa, from memory of handbook tables. Carbide: E 550 to
 * 630 GPa read in two property pages of tungsten carbide; rupture 1.83 GPa read in one of them, up
 * to 4 GPa from memory. The low ends are the ones that decide.
 *
 * @param modulusPa Young's modulus in Pa
 * @param ruptureStrengthPa transverse rupture strength in Pa
 */
public record ToolStrength(Band modulusPa, Band ruptureStrengthPa) {

  /** Young's modulus of the steel of arbors and holders in Pa. */
  public static final double HOLDER_STEEL_PA = 205e9;

  /** The properties of a tool material. */
  public static ToolStrength of(ToolMaterial material) {
    return switch (material) {
      case HSS -> new ToolStrength(new Band(207e9, 210e9, 225e9), new Band(3e9, 3.5e9, 4.5e9));
      case CARBIDE -> new ToolStrength(new Band(550e9, 600e9, 630e9), new Band(1.83e9, 2.5e9, 4e9));
    };
  }
}
