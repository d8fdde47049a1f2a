package org.standproud.assessment;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.standproud.refusal.BodyTooLargeException;

/**
 * Decodes bodies as UTF-8 text, up to a limit.
 *
 * @param limitBytes most bytes of a body
 */
public record BodyText(int limitBytes) {

  /**
   * A body as text.
   *
   * @param body its bytes; of a longer body, the first bytes past the limit are enough
   * @throws BodyTooLargeException if it is longer than the limit
   * @throws MalformedRequestException if it is not UTF-8
   */
  public String of(byte[] body) {
    if (body.length > limitBytes) {
      throw new BodyTooLargeException(limitBytes);
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
    } catch (CharacterCodingException e) {
      throw new MalformedRequestException("the body is not UTF-8 text");
    }
  }
}
