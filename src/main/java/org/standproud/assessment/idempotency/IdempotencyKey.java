package org.standproud.assessment.idempotency;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.refusal.BadParameterException;

/**
 * The key of a request, so that it can be sent again without being judged again.
 *
 * @param caller the caller; keys of two callers never collide
 * @param value the key
 */
public record IdempotencyKey(String caller, String value) {

  /** Name of the header (draft-ietf-httpapi-idempotency-key-header). */
  public static final String HEADER = "Idempotency-Key";

  /** A String of RFC 8941: printable ASCII in quotes, with quote and backslash escaped. */
  private static final Pattern QUOTED = Pattern.compile("\"((?:[ !#-\\[\\]-~]|\\\\[\"\\\\])*)\"");

  private static final Pattern KEY = Pattern.compile("[!-~](?:[ -~]{0,198}[!-~])?");

  /** Refuses a key that could be mistaken for another. */
  public IdempotencyKey {
    if (!KEY.matcher(value).matches()) {
      throw new BadParameterException(
          HEADER, "must be 1 to 200 printable ASCII characters, best a UUID");
    }
  }

  /**
   * Parses the header. The draft requires a String of RFC 8941, in quotes; many clients send the
   * bare text, which counts as the same key.
   *
   * @param caller the caller
   * @param header its value, or null
   * @return null if there is none
   * @throws BadParameterException if it is invalid
   */
  public static @Nullable IdempotencyKey read(String caller, @Nullable String header) {
    if (header == null) {
      return null;
    }
    String text = header.strip();
    Matcher quoted = QUOTED.matcher(text);
    boolean plain = !text.startsWith("\"");
    if (!plain && !quoted.matches()) {
      throw new BadParameterException(HEADER, "has unmatched quotes");
    }
    return new IdempotencyKey(caller, plain ? text : quoted.group(1).replaceAll("\\\\(.)", "$1"));
  }
}
