package org.standproud.api.assessments;

import jakarta.servlet.http.HttpServletRequest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.standproud.api.assessing.MalformedRequest;
import org.standproud.api.problem.BadParameter;
import org.standproud.api.problem.BodyTooLarge;
import org.standproud.api.problem.BodyTooSlow;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads bodies, up to a limit. */
@Component
public class Bodies {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private static final JsonMapper WITH_GAPS =
      MAPPER.rebuild().disable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES).build();

  private static final int PIECE_BYTES = 8192;

  private final int limitBytes;
  private final Duration slowest;

  Bodies(
      @Value("${standproud.api.largest-body}") DataSize limit,
      @Value("${standproud.api.slowest-body}") Duration slowest) {
    this.limitBytes = Math.toIntExact(limit.toBytes());
    this.slowest = slowest;
  }

  /** Most bytes in a body, or in a line of a longer one. */
  public int limitBytes() {
    return limitBytes;
  }

  /**
   * What the body says; a member that is not known is refused, never left unheard.
   *
   * @param type a record of the members there may be
   * @throws BodyTooLarge if it is longer than the limit, whatever length it claims
   * @throws BodyTooSlow if it takes longer to arrive than it may
   * @throws MalformedRequest if it is not JSON
   * @throws BadParameter if it says something else
   */
  public <T> T read(HttpServletRequest request, Class<T> type) throws IOException {
    return read(text(request), type, MAPPER);
  }

  /**
   * What a text says, where any member may be left out; one left out is null.
   *
   * @param json the text
   * @param type a record of the members there may be
   * @throws MalformedRequest if it is not JSON
   * @throws BadParameter if it says something else
   */
  public static <T> T readWithGaps(String json, Class<T> type) {
    return read(json, type, WITH_GAPS);
  }

  private static <T> T read(String json, Class<T> type, JsonMapper mapper) {
    try {
      T read = mapper.readValue(json, type);
      if (read == null) {
        throw new BadParameter("body", "an object is wanted, and it is null");
      }
      return read;
    } catch (DatabindException e) {
      throw new BadParameter("body", wanted(e, type));
    } catch (JacksonException e) {
      throw new MalformedRequest(String.valueOf(e.getOriginalMessage()));
    }
  }

  private static String wanted(DatabindException e, Class<?> type) {
    String members =
        Arrays.stream(type.getRecordComponents())
            .map(RecordComponent::getName)
            .collect(Collectors.joining(", "));
    String where =
        e.getPath().stream()
            .map(step -> step.getPropertyName() == null ? "*" : step.getPropertyName())
            .collect(Collectors.joining("/"));
    return "its members are " + members + (where.isEmpty() ? "" : "; look at " + where);
  }

  /**
   * The body as text.
   *
   * @throws BodyTooLarge if it is longer than the limit, whatever length it claims
   * @throws BodyTooSlow if it takes longer to arrive than it may
   * @throws MalformedRequest if it is not UTF-8
   */
  public String text(HttpServletRequest request) throws IOException {
    return text(request, limitBytes);
  }

  /**
   * The body of a call that has a limit of its own, as text.
   *
   * @param limitBytes most bytes
   * @throws BodyTooLarge if it is longer than the limit, whatever length it claims
   * @throws BodyTooSlow if it takes longer to arrive than it may
   * @throws MalformedRequest if it is not UTF-8
   */
  public String text(HttpServletRequest request, int limitBytes) throws IOException {
    if (request.getContentLengthLong() > limitBytes) {
      throw new BodyTooLarge(limitBytes);
    }
    return text(inTime(request.getInputStream(), limitBytes + 1));
  }

  /** Looks at the clock after each piece; a caller who sends none runs into the server's limit. */
  private byte[] inTime(InputStream in, int most) throws IOException {
    long end = System.nanoTime() + slowest.toNanos();
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    byte[] piece = new byte[PIECE_BYTES];
    int read;
    while ((read = in.read(piece, 0, Math.min(PIECE_BYTES, most - body.size()))) > 0) {
      body.write(piece, 0, read);
      if (System.nanoTime() - end > 0) {
        throw new BodyTooSlow(slowest);
      }
    }
    return body.toByteArray();
  }

  /**
   * A body as text.
   *
   * @param body its bytes; of a longer one the first that are too many are enough
   * @throws BodyTooLarge if it is longer than the limit
   * @throws MalformedRequest if it is not UTF-8
   */
  public String text(byte[] body) {
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
