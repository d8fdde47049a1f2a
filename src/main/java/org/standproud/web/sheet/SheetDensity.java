package org.standproud.web.sheet;

/**
 * How much a sheet tells in full, so that it stays on two pages. What is not told in full is told
 * by the id of its card; nothing is left out without saying so.
 */
enum SheetDensity {
  /** As a sheet mostly is. */
  AMPLE(12, 12, true),
  /** With several findings. */
  ENOUGH(12, 12, false),
  /** With many findings. */
  FAIR(8, 8, false),
  /** With very many. */
  SCARCE(6, 3, false),
  /** With long texts besides. */
  LEAST(3, 0, false);

  private final int stops;
  private final int cautions;
  private final boolean chart;

  SheetDensity(int stops, int cautions, boolean chart) {
    this.stops = stops;
    this.cautions = cautions;
    this.chart = chart;
  }

  /** Stops told in full. */
  int stops() {
    return stops;
  }

  /** Cautions told in full. */
  int cautions() {
    return cautions;
  }

  /** Whether there is room for the chart. */
  boolean chart() {
    return chart;
  }
}
