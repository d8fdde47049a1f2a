package org.standproud.advice;

import java.util.List;

/** The cautions of every answer, whatever its verdict. */
public final class Cautions {

  private static final List<String> ALL =
      List.of(
          "Advice only: the machine's manual, local codes and safety rules, and a licensed or"
              + " qualified person at the machine come first.",
          "The findings rest on models and on inputs with stated uncertainty; a set-up that could"
              + " not be judged is not safe.",
          "Keep guards in place and wear eye protection (ISO 16090-1, 29 CFR 1910.212, ANSI B11.8"
              + " or what your country asks).",
          "Stop the spindle before you measure, adjust, clear chips or reach near the cutter.",
          "Clamp and tug at the stock; with the power off, turn the spindle by hand past the work;"
              + " take the first pass light.");

  private Cautions() {}

  /** Every caution, in reading order. */
  public static List<String> all() {
    return ALL;
  }
}
