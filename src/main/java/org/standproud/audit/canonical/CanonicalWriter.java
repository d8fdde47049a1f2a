package org.standproud.audit.canonical;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Arrays;
import org.erdtman.jcs.NumberToJSON;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.JsonNode;

/**
 * Writes a tree in the form of RFC 8785 in one walk. Records are hashed and stored in this form, so
 * what it costs is a large part of what an answer costs.
 */
final class CanonicalWriter {

  /** RFC 8785 section 3.2.2.2 writes control characters with small hexadecimal digits. */
  private static final JsonFactory FACTORY =
      JsonFactory.builder().disable(JsonWriteFeature.WRITE_HEX_UPPER_CASE).build();

  private final JsonGenerator out;

  private CanonicalWriter(JsonGenerator out) {
    this.out = out;
  }

  /**
   * The canonical text of a tree.
   *
   * @throws NotCanonical for a number the form cannot hold, or a node that is no JSON value
   */
  static String text(JsonNode tree) {
    StringWriter text = new StringWriter(1_024);
    try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
      new CanonicalWriter(out).value(tree);
    }
    return text.toString();
  }

  private void value(JsonNode node) {
    switch (node.getNodeType()) {
      case OBJECT -> object(node);
      case ARRAY -> array(node);
      case STRING -> out.writeString(node.stringValue());
      case NUMBER -> number(node);
      case BOOLEAN -> out.writeBoolean(node.booleanValue());
      case NULL -> out.writeNull();
      default -> throw new NotCanonical("a node is no JSON value");
    }
  }

  /** String compares by UTF-16 code unit, which is the order of RFC 8785 section 3.2.3. */
  private void object(JsonNode node) {
    String[] names = node.propertyNames().toArray(String[]::new);
    Arrays.sort(names);
    out.writeStartObject();
    for (String name : names) {
      out.writeName(name);
      value(node.get(name));
    }
    out.writeEndObject();
  }

  private void array(JsonNode node) {
    out.writeStartArray();
    for (JsonNode element : node) {
      value(element);
    }
    out.writeEndArray();
  }

  private void number(JsonNode node) {
    if (node.canConvertToInt() && node.isIntegralNumber()) {
      out.writeNumber(node.intValue());
    } else if (node.isIntegralNumber()) {
      out.writeNumber(integer(node));
    } else {
      // A float or a decimal means the digits it is written with.
      out.writeNumber(
          written(node.isDouble() ? node.doubleValue() : Double.parseDouble(node.asString())));
    }
  }

  private static String integer(JsonNode integer) {
    String written = written(integer.asDouble());
    if (new BigDecimal(written).compareTo(integer.decimalValue()) != 0) {
      throw new NotCanonical("integer " + integer + " is beyond what a double can hold");
    }
    return written;
  }

  private static String written(double number) {
    try {
      return NumberToJSON.serializeNumber(number);
    } catch (IOException e) {
      throw new NotCanonical("a number is not finite");
    }
  }
}
