package org.standproud.mechanics.force;

import org.standproud.setup.Band;

/** One of the three values of a band. */
public enum BandEnd {
  /** The least value. */
  LOW,
  /** The likely value. */
  LIKELY,
  /** The greatest value. */
  HIGH;

  /** The value of a band at this end, in the unit of the band. */
  public double of(Band band) {
    return switch (this) {
      case LOW -> band.low();
      case LIKELY -> band.likely();
      case HIGH -> band.high();
    };
  }

  /** The other end; the likely value is its own opposite. */
  public BandEnd opposite() {
    return switch (this) {
      case LOW -> HIGH;
      case LIKELY -> LIKELY;
      case HIGH -> LOW;
    };
  }
}
