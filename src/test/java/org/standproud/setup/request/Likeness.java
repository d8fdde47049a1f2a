package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Compares two kept set-ups number by number; their units may differ. */
final class Likeness {

  private Likeness() {}

  static void check(String expected, String actual) {
    JsonMapper json = JsonMapper.shared();
    check("", json.readTree(expected), json.readTree(actual));
  }

  private static void check(String pointer, JsonNode expected, JsonNode actual) {
    if (pointer.equals("/units")) {
      return;
    }
    if (expected.isNumber()) {
      double value = expected.doubleValue();
      assertThat(actual.doubleValue())
          .as(pointer)
          .isCloseTo(value, within(1e-12 * Math.abs(value)));
    } else if (expected.isContainer()) {
      assertThat(actual.size()).as(pointer).isEqualTo(expected.size());
      expected
          .propertyNames()
          .forEach(n -> check(pointer + "/" + n, expected.get(n), actual.get(n)));
      for (int i = 0; expected.isArray() && i < expected.size(); i++) {
        check(pointer + "/" + i, expected.get(i), actual.get(i));
      }
    } else {
      assertThat(actual).as(pointer).isEqualTo(expected);
    }
  }
}
