package org.standproud.advice.job;

import org.standproud.setup.Band;

/**
 * A time in minutes.
 *
 * @param low least
 * @param likely likely
 * @param high greatest
 */
public record Minutes(double low, double likely, double high) {

  static Minutes of(Band band) {
    return new Minutes(band.low(), band.likely(), band.high());
  }
}
