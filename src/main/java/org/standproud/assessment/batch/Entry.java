package org.standproud.assessment.batch;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.SetupRequest;

/**
 * A line or row of a batch, not yet parsed.
 *
 * @param line its number, from 1
 * @param reading parses it
 */
public record Entry(long line, Reading reading) {

  /** Parses a line, in the thread that judges it. */
  @FunctionalInterface
  interface Reading {

    /** The parsed line; throws the exception of a single request. */
    Parsed read();
  }

  /**
   * A parsed line.
   *
   * @param request the set-up as sent
   * @param key its idempotency key, or null
   * @param columns the column of each field, empty if there are no columns
   */
  record Parsed(SetupRequest request, @Nullable String key, Map<String, String> columns) {}
}
