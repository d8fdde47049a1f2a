package org.standproud.assessment.idempotency;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.refusal.BadParameterException;

/**
 * What a caller names a request by, so that it may be sent again without being judged again.
 *
 * @param caller whose key it is; keys of two callers never meet
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
          HEADER, "1 to 200 printable ASCII characters are wanted, best a UUID");
    }
  }

  /**
   * Reads the header. The draft wants a String of RFC 8941, in quotes; many clients send the bare
   * text, which is taken for the same key.
   *
   * @param caller who sent it
   * @param header its value, null when there is none
   * @return null when there is none
   * @throws BadParameterException when it is no key
   */
  public static @Nullable IdempotencyKey read(String caller, @Nullable String header) {
    if (header == null) {
      return null;
    }
    String text = header.strip();
    Matcher quoted = QUOTED.matcher(text);
    boolean plain = !text.startsWith("\"");
    if (!plain && !quoted.matches()) {
      throw new BadParameterException(HEADER, "its quotes do not match");
    }
    return new IdempotencyKey(caller, plain ? text : quoted.group(1).replaceAll("\\\\(.)", "$1"));
  }
}
