package org.standproud.api.assessments;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.standproud.api.assessing.MalformedRequest;
import org.standproud.api.problem.BodyTooLarge;

/** Reads bodies as text, up to a limit. */
@Component
public class Bodies {

  private final int limitBytes;

  Bodies(@Value("${standproud.api.largest-body}") DataSize limit) {
    this.limitBytes = Math.toIntExact(limit.toBytes());
  }

  /**
   * The body as text.
   *
   * @throws BodyTooLarge if it is longer than the limit, whatever length it claims
   * @throws MalformedRequest if it is not UTF-8
   */
  public String text(HttpServletRequest request) throws IOException {
    if (request.getContentLengthLong() > limitBytes) {
      throw new BodyTooLarge(limitBytes);
    }
    byte[] body = request.getInputStream().readNBytes(limitBytes + 1);
    if (body.length > limitBytes) {
      throw new BodyTooLarge(limitBytes);
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
    } catch (CharacterCodingException e) {
      throw new MalformedRequest("the body is not UTF-8 text");
    }
  }
}
