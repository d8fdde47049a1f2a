package org.standproud.audit.canonical;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.standproud.setup.Worded;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JacksonModule;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * JSON as callers read it: enums as their words, times as ISO 8601, and unknown values left out.
 */
public final class PlainJson {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(words())
          .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_NULL))
          // Canonical JSON orders members by name.
          .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .disable(MapperFeature.SORT_CREATOR_PROPERTIES_FIRST)
          .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
          .enable(JsonNodeFeature.WRITE_PROPERTIES_SORTED)
          .build();

  private PlainJson() {}

  /** Writes every {@link Worded} choice as its words. */
  public static JacksonModule words() {
    return new SimpleModule("words").addSerializer(Worded.class, new Words());
  }

  /**
   * The canonical JSON of a record.
   *
   * @param value a record of plain values
   * @throws org.standproud.audit.canonical.NotCanonical if a number in it is not finite
   */
  public static CanonicalJson canonical(Object value) {
    return CanonicalJson.written(out -> MAPPER.writeValue(out, value));
  }

  private static final class Words extends ValueSerializer<Worded> {
    @Override
    public void serialize(Worded choice, JsonGenerator out, SerializationContext context) {
      out.writeString(choice.words());
    }
  }
}
