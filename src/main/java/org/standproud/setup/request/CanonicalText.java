package org.standproud.setup.request;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A set-up as text that is kept: every field of the record under its own name, in SI units, sorted,
 * with nothing left out and no number rounded. Equal set-ups give equal text, and reading the text
 * returns an equal set-up.
 */
public final class CanonicalText {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
          .changeDefaultVisibility(v -> v.withIsGetterVisibility(Visibility.NONE))
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .build();

  /** Members by name and by nothing else; a catalogue's digest is over the older order. */
  private static final JsonMapper SORTED =
      MAPPER.rebuild().disable(MapperFeature.SORT_CREATOR_PROPERTIES_FIRST).build();

  private CanonicalText() {}

  /**
   * The text of a set-up.
   *
   * @param setup the set-up
   */
  public static String of(Setup setup) {
    return SORTED.writeValueAsString(setup);
  }

  /**
   * Writes the text of a set-up to a generator that decides the form.
   *
   * @param setup the set-up
   * @param out gets the same members in the same order as {@link #of}
   */
  public static void write(Setup setup, JsonGenerator out) {
    SORTED.writeValue(out, setup);
  }

  /**
   * The set-up of a text.
   *
   * @param text a text that {@link #of} returned
   * @throws IllegalArgumentException if the text is not one that {@link #of} gives
   */
  public static Setup setup(String text) {
    try {
      return MAPPER.readValue(text, Setup.class);
    } catch (JacksonException e) {
      throw new IllegalArgumentException("not the canonical text of a set-up", e);
    }
  }

  /**
   * The set-up as a caller would write it, in plain numbers of a unit system and with machine,
   * vise, cutter and material described in full.
   *
   * @param setup the set-up
   * @param units the units to write it in
   */
  public static ObjectNode request(Setup setup, UnitSystem units) {
    Values values = RequestFields.SHAPE.of(setup);
    values.put(RequestFields.UNITS, units);
    ObjectNode request = RequestFields.SHAPE.write(values, units);
    return request;
  }

  /** The content of a catalogue as one number: SHA-256 of its canonical text, in hexadecimal. */
  static String digest(Catalogue catalogue) {
    try {
      byte[] text = MAPPER.writeValueAsString(catalogue).getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
