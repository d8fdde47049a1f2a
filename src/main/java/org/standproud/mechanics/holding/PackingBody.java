package org.standproud.mechanics.holding;

import org.standproud.setup.Band;
import org.standproud.setup.PackingMaterial;

/**
 * Elastic figures of packing: Young's modulus in Pa, Poisson's ratio, and yield of the soft state
 * in Pa. Copper, aluminium, brass and steel moduli from engineering property tables; yields of the
 * soft states and all paper figures are common practice, no source.
 */
public record PackingBody(Band youngsPa, double poisson, Band yieldPa) {

  /**
   * The figures of a packing material.
   *
   * @param material what the packing is made of
   */
  public static PackingBody of(PackingMaterial material) {
    return switch (material) {
      case COPPER -> new PackingBody(Band.exactly(117e9), 0.34, new Band(50e6, 69e6, 310e6));
      case ALUMINIUM -> new PackingBody(Band.exactly(69e9), 0.33, new Band(30e6, 90e6, 276e6));
      case BRASS -> new PackingBody(Band.exactly(100e9), 0.34, new Band(100e6, 124e6, 310e6));
      case STEEL -> new PackingBody(Band.exactly(205e9), 0.30, new Band(200e6, 250e6, 1200e6));
      case PAPER -> new PackingBody(new Band(30e6, 60e6, 200e6), 0.30, new Band(1e6, 3e6, 10e6));
    };
  }
}
