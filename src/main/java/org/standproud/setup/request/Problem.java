package org.standproud.setup.request;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a request.
 *
 * @param pointer where, as an RFC 6901 JSON Pointer
 * @param value what stands there, shortened; null if nothing does
 * @param message what is wrong, in one sentence
 * @param allowed what may stand there, in the caller's unit; null if that is no list or range
 * @param unit the unit of value and range; null for what has none
 * @param hint what was probably meant; null if nothing comes near
 */
public record Problem(
    String pointer,
    @Nullable String value,
    String message,
    @Nullable String allowed,
    @Nullable String unit,
    @Nullable String hint) {

  /** The message of a value that is not given. */
  public static final String MISSING = "this is missing";

  /** The message of a value that is given as not known, but has to be. */
  public static final String UNKNOWN = "this must be known";

  /** The message of what is no number where one belongs. */
  public static final String NO_NUMBER = "enter a number";

  /** The message of a number that is too small or too large. */
  public static final String OUT_OF_RANGE = "this number is out of range";
}
