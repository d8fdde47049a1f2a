package org.standproud.web.sheet;

/**
 * How many findings a sheet prints in full, so that it stays on two pages. The rest are listed by
 * card id; nothing is left out silently.
 */
enum SheetDensity {
  /** The usual sheet. */
  AMPLE(12, 12, true),
  /** With several findings. */
  ENOUGH(12, 12, false),
  /** With many findings. */
  FAIR(8, 8, false),
  /** With very many. */
  SCARCE(6, 3, false),
  /** With long texts as well. */
  LEAST(3, 0, false);

  private final int stops;
  private final int cautions;
  private final boolean chart;

  SheetDensity(int stops, int cautions, boolean chart) {
    this.stops = stops;
    this.cautions = cautions;
    this.chart = chart;
  }

  /** Stops printed in full. */
  int stops() {
    return stops;
  }

  /** Cautions printed in full. */
  int cautions() {
    return cautions;
  }

  /** Whether there is room for the chart. */
  boolean chart() {
    return chart;
  }
}
