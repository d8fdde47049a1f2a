package org.standproud.faults.fuzz;

import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Values made from a schema, and hostile replacements for them. */
final class Hostile {

  private static final int DEEPEST = 6;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "\u0000",
          "\u202e\ufeff\ud83d\ude00",
          "\ud800",
          "null",
          "true",
          "-1",
          "0",
          "9223372036854775808",
          "1e400",
          "NaN",
          "1/0",
          "../../../../etc/passwd",
          "..%2f..%2f",
          "%00%ff%c0%af",
          "' or '1'='1' --",
          "\"; drop table audit_record; --",
          "<script>alert(1)</script>",
          "${jndi:ldap://127.0.0.1:1/x}",
          "#{T(java.lang.Runtime).getRuntime()}",
          "%s%n%n%x",
          "a\r\nX-Injected: yes",
          "=1+1",
          "2026-02-30",
          "-999999999-01-01T00:00:00Z",
          "+999999999-12-31T23:59:59.999999999Z",
          "P999999999Y",
          "PT-1S",
          "00000000-0000-0000-0000-000000000000",
          "00000000-0000-0000-0000-00000000000g",
          "\"*\"",
          "W/\"x\"",
          "for x in 1..1000000000 return x",
          "(((((((((((((((((((((((((((((((((((((((((",
          "javascript:alert(1)",
          "http://127.0.0.1:1/",
          "file:///etc/passwd");

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0.0",
          "-1",
          "1e-320",
          "1e308",
          "-1e308",
          "1e9999",
          "2147483648",
          "-9223372036854775809",
          "0.1e-400",
          "999999999999999999999999999999999999999999999999",
          "1.0000000000000000000001");

  private final ContractOperations contract;
  private final Random chance;

  Hostile(ContractOperations contract, Random chance) {
    this.contract = contract;
    this.chance = chance;
  }

  /** Whether something happens that happens so many times in a hundred. */
  boolean in(int hundred) {
    return chance.nextInt(100) < hundred;
  }

  /** One of several. */
  <T> T one(List<T> of) {
    return of.get(chance.nextInt(of.size()));
  }

  /** A text that means harm. */
  String text() {
    return in(5) ? one(TEXTS).repeat(1 + chance.nextInt(400)) : one(TEXTS);
  }

  /** A parameter, right as often as not. */
  String parameter(JsonNode schema) {
    if (in(50)) {
      return text();
    }
    JsonNode value = value(schema, 0);
    return value.isValueNode() ? value.asString() : value.toString();
  }

  /** A body that a schema describes, apart from what is wrong in it. */
  JsonNode value(JsonNode described, int depth) {
    JsonNode schema = contract.resolved(described);
    if (depth > DEEPEST || in(4)) {
      return scalar();
    }
    for (String choice : List.of("oneOf", "anyOf")) {
      if (schema.has(choice) && !schema.get(choice).isEmpty()) {
        return value(schema.get(choice).get(chance.nextInt(schema.get(choice).size())), depth);
      }
    }
    if (schema.has("enum")) {
      return schema.get("enum").get(chance.nextInt(schema.get("enum").size()));
    }
    return typed(schema, depth);
  }

  private JsonNode typed(JsonNode schema, int depth) {
    JsonNode types = schema.path("type");
    String type = types.isArray() ? types.path(0).stringValue("") : types.stringValue("object");
    return switch (type) {
      case "object" -> object(schema, depth);
      case "array" -> array(schema, depth);
      case "number", "integer" -> NODES.numberNode(chance.nextInt(200) - 20);
      case "boolean" -> NODES.booleanNode(in(50));
      default ->
          NODES.stringNode(schema.has("example") ? schema.get("example").asString() : text());
    };
  }

  private JsonNode object(JsonNode schema, int depth) {
    ObjectNode object = NODES.objectNode();
    for (var property : schema.path("properties").properties()) {
      if (in(80)) {
        object.set(property.getKey(), value(property.getValue(), depth + 1));
      }
    }
    if (in(10)) {
      object.set(text(), scalar());
    }
    return object;
  }

  private JsonNode array(JsonNode schema, int depth) {
    ArrayNode array = NODES.arrayNode();
    int size = in(3) ? 300 : chance.nextInt(4);
    for (int i = 0; i < size; i++) {
      array.add(value(schema.path("items"), depth + 1));
    }
    return array;
  }

  private JsonNode scalar() {
    return switch (chance.nextInt(6)) {
      case 0 -> NODES.nullNode();
      case 1 -> NODES.booleanNode(true);
      case 2 -> NODES.numberNode(new java.math.BigDecimal(one(NUMBERS)));
      case 3 -> NODES.arrayNode();
      case 4 -> NODES.objectNode();
      default -> NODES.stringNode(text());
    };
  }

  /** A right body with one to three of its values put out of order. */
  JsonNode spoilt(JsonNode right) {
    JsonNode body = right.deepCopy();
    for (int wrongs = 1 + chance.nextInt(3); wrongs > 0; wrongs--) {
      spoil(body);
    }
    return body;
  }

  private void spoil(JsonNode node) {
    if (node instanceof ObjectNode object && !object.isEmpty()) {
      String name = one(List.copyOf(object.propertyNames()));
      JsonNode child = object.get(name);
      if (child.isContainer() && !child.isEmpty() && in(70)) {
        spoil(child);
      } else if (in(15)) {
        object.remove(name);
      } else {
        object.set(name, scalar());
      }
    } else if (node instanceof ArrayNode array && !array.isEmpty()) {
      array.set(chance.nextInt(array.size()), scalar());
    }
  }

  /**
   * A text as it should not be sent: cut off, doubled, with bytes that are no UTF-8, far too deep.
   */
  byte[] garbled(String text) {
    byte[] bytes = text.getBytes(java.nio.charset.StandardCharsets.UTF_8);
    switch (chance.nextInt(6)) {
      case 0:
        return java.util.Arrays.copyOf(bytes, chance.nextInt(bytes.length + 1));
      case 1:
        return (text + text).getBytes(java.nio.charset.StandardCharsets.UTF_8);
      case 2:
        if (bytes.length > 0) {
          bytes[chance.nextInt(bytes.length)] = (byte) (0x80 | chance.nextInt(128));
        }
        return bytes;
      case 3:
        return "[".repeat(20_000).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
      case 4:
        return new byte[chance.nextInt(200_000)];
      default:
        return one(List.of(
                "{\"a\":1,\"a\":2}", "\ufeff{}", "1e999999999", "\"" + text(), "&a [*a,*a]"))
            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }
  }
}
