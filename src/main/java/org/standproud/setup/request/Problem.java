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
    @Nullable String hint) {}
