package org.standproud.audit.canonical;

import java.util.Arrays;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;

/** Writes a tree with its members in the order of RFC 8785 section 3.2.3. */
final class CanonicalWriter {

  private final JsonGenerator out;

  CanonicalWriter(JsonGenerator out) {
    this.out = out;
  }

  /**
   * Writes a tree.
   *
   * @throws NotCanonical for a number that cannot be represented, or a node that is not a JSON
   *     value
   */
  void value(JsonNode node) {
    switch (node.getNodeType()) {
      case OBJECT -> object(node);
      case ARRAY -> array(node);
      case STRING -> out.writeString(node.stringValue());
      case NUMBER -> number(node);
      case BOOLEAN -> out.writeBoolean(node.booleanValue());
      case NULL -> out.writeNull();
      default -> throw CanonicalGenerator.noValue();
    }
  }

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
    switch (node.numberType()) {
      case INT, LONG -> out.writeNumber(node.longValue());
      case BIG_INTEGER -> out.writeNumber(node.bigIntegerValue());
      case DOUBLE -> out.writeNumber(node.doubleValue());
      case FLOAT -> out.writeNumber(node.floatValue());
      case BIG_DECIMAL -> out.writeNumber(node.decimalValue());
    }
  }
}
