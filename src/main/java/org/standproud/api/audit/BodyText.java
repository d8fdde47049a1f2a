package org.standproud.api.audit;

import org.standproud.api.assessing.MalformedRequest;
import org.standproud.api.problem.BadParameter;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads what people decide; a member that is not known is refused, never left unheard. */
final class BodyText {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private BodyText() {}

  static <T> T read(String json, Class<T> type) {
    try {
      return MAPPER.readValue(json, type);
    } catch (DatabindException e) {
      throw new BadParameter("body", String.valueOf(e.getOriginalMessage()));
    } catch (JacksonException e) {
      throw new MalformedRequest(String.valueOf(e.getOriginalMessage()));
    }
  }
}
