package org.standproud.assessment.batch;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.SetupRequest;

/**
 * One line or row of a batch, not yet read.
 *
 * @param line its number, from 1
 * @param reading reads it
 */
public record Entry(long line, Reading reading) {

  /** Reads what stands in a line, in the thread that judges it. */
  @FunctionalInterface
  interface Reading {

    /** What the line asks; throws what a single request would be refused with. */
    Wanted read();
  }

  /**
   * What a line asks.
   *
   * @param request the set-up as it was written
   * @param key the line's idempotency key, null when it has none
   * @param columns the column that each field came from, empty where lines have no columns
   */
  record Wanted(SetupRequest request, @Nullable String key, Map<String, String> columns) {}
}
