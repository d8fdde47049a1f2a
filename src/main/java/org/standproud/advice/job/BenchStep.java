package org.standproud.advice.job;

import com.fasterxml.jackson.annotation.JsonValue;
import org.standproud.setup.Band;
import org.standproud.setup.Worded;

/** The steps of a route between the passes. Their times in minutes: common practice, no source. */
public enum BenchStep implements Worded {
  /** Tram the fixed jaw. */
  INDICATE("indicate the vise", 5, 10, 20),
  /** Take the burr off. */
  DEBURR("deburr", 1, 2, 4),
  /** Put another cutter in. */
  CUTTER("change the cutter", 2, 4, 8),
  /** Put the plate in or turn it, and clamp. */
  CLAMP("clamp", 2, 4, 8),
  /** Stand it on end, true to a square, and clamp. */
  SQUARE_UP("square up and clamp", 4, 8, 15),
  /** Put packing in or take it out. */
  PACKING("packing", 0.5, 1, 2),
  /** Stop the spindle and measure. */
  MEASURE("measure", 1, 2, 4),
  /** Run the last pass again without a new depth. */
  SPRING_PASS("spring pass", 0, 0, 0);

  private final String words;
  private final Band minutes;

  BenchStep(String words, double least, double likely, double greatest) {
    this.words = words;
    this.minutes = new Band(least, likely, greatest);
  }

  /** Time in minutes; of a spring pass that of the pass it repeats. */
  Band minutes() {
    return minutes;
  }

  @JsonValue
  @Override
  public String words() {
    return words;
  }
}
