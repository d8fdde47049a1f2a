package org.standproud.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.standproud.assessment.ApiProperties;
import org.standproud.assessment.BodyText;
import org.standproud.assessment.MalformedRequestException;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.BodyTooLargeException;
import org.standproud.refusal.BodyTooSlowException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads request bodies, up to a limit. */
@Component
public class RequestBodies {

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

  @Autowired
  RequestBodies(ApiProperties properties) {
    this(properties.largestBody(), properties.slowestBody());
  }

  /**
   * A reader of bodies.
   *
   * @param limit most bytes in a body
   * @param slowest how long a body may take to arrive
   */
  RequestBodies(DataSize limit, Duration slowest) {
    this.limitBytes = Math.toIntExact(limit.toBytes());
    this.slowest = slowest;
  }

  /** Most bytes in a body, or in a line of a longer one. */
  public int limitBytes() {
    return limitBytes;
  }

  /**
   * Parses the body; an unknown member is refused, never ignored.
   *
   * @param type record of the known members
   * @throws BodyTooLargeException if it is longer than the limit, whatever its Content-Length
   * @throws BodyTooSlowException if it arrives too slowly
   * @throws MalformedRequestException if it is not JSON
   * @throws BadParameterException if it has another shape
   */
  public <T> T read(HttpServletRequest request, Class<T> type) throws IOException {
    return read(text(request), type, MAPPER);
  }

  /**
   * Parses a text in which every member may be left out; a missing one is null.
   *
   * @param json the text
   * @param type record of the known members
   * @throws MalformedRequestException if it is not JSON
   * @throws BadParameterException if it has another shape
   */
  public static <T> T readWithGaps(String json, Class<T> type) {
    return read(json, type, WITH_GAPS);
  }

  private static <T> T read(String json, Class<T> type, JsonMapper mapper) {
    try {
      T read = mapper.readValue(json, type);
      if (read == null) {
        throw new BadParameterException("body", "must be an object, not null");
      }
      return read;
    } catch (DatabindException e) {
      throw new BadParameterException("body", wanted(e, type));
    } catch (JacksonException e) {
      throw new MalformedRequestException(String.valueOf(e.getOriginalMessage()));
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
   * Returns the body as text.
   *
   * @throws BodyTooLargeException if it is longer than the limit, whatever its Content-Length
   * @throws BodyTooSlowException if it arrives too slowly
   * @throws MalformedRequestException if it is not UTF-8
   */
  public String text(HttpServletRequest request) throws IOException {
    return text(request, limitBytes);
  }

  /**
   * Returns a body that has its own limit, as text.
   *
   * @param limitBytes most bytes
   * @throws BodyTooLargeException if it is longer than the limit, whatever its Content-Length
   * @throws BodyTooSlowException if it arrives too slowly
   * @throws MalformedRequestException if it is not UTF-8
   */
  public String text(HttpServletRequest request, int limitBytes) throws IOException {
    return new BodyText(limitBytes).of(received(request, limitBytes));
  }

  /**
   * The body of a call that has a limit of its own, as bytes.
   *
   * @param limitBytes most bytes
   * @throws BodyTooLargeException if it is longer than the limit, whatever length it claims
   * @throws BodyTooSlowException if it takes longer to arrive than it may
   */
  public byte[] bytes(HttpServletRequest request, int limitBytes) throws IOException {
    byte[] body = received(request, limitBytes);
    if (body.length > limitBytes) {
      throw new BodyTooLargeException(limitBytes);
    }
    return body;
  }

  /** At most one byte more than there may be. */
  private byte[] received(HttpServletRequest request, int limitBytes) throws IOException {
    if (request.getContentLengthLong() > limitBytes) {
      throw new BodyTooLargeException(limitBytes);
    }
    return inTime(request.getInputStream(), limitBytes + 1);
  }

  /** Checks the clock after each piece; a caller that sends nothing hits the server's own limit. */
  private byte[] inTime(InputStream in, int most) throws IOException {
    long end = System.nanoTime() + slowest.toNanos();
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    byte[] piece = new byte[PIECE_BYTES];
    int read;
    while ((read = in.read(piece, 0, Math.min(PIECE_BYTES, most - body.size()))) > 0) {
      body.write(piece, 0, read);
      if (System.nanoTime() - end > 0) {
        throw new BodyTooSlowException(slowest);
      }
    }
    return body.toByteArray();
  }

  /**
   * Decodes a body.
   *
   * @param body its bytes; of a longer body, the first bytes past the limit are enough
   * @throws BodyTooLargeException if it is longer than the limit
   * @throws MalformedRequestException if it is not UTF-8
   */
  public String text(byte[] body) {
    return new BodyText(limitBytes).of(body);
  }
}
