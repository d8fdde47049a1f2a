package org.standproud.setup.request;

import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;

/**
 * A place in the request while it is read.
 *
 * @param pointer RFC 6901 JSON Pointer
 * @param units the caller's units
 * @param catalogue where names are looked up
 * @param faults where problems go
 */
record FieldLocation(
    String pointer, UnitSystem units, Catalogue catalogue, ProblemCollector faults) {

  /** The place of a field that is described: its name is known to be short and plain. */
  FieldLocation child(String name) {
    return new FieldLocation(pointer + "/" + name, units, catalogue, faults);
  }

  /** The place of a field that someone made up. */
  FieldLocation stranger(String name) {
    return child(MessageText.shortened(name).replace("~", "~0").replace("/", "~1"));
  }

  FieldLocation item(int index) {
    return new FieldLocation(pointer + "/" + index, units, catalogue, faults);
  }

  void fault(@Nullable JsonNode found, String message) {
    fault(found, message, null, null, null);
  }

  void fault(
      @Nullable JsonNode found,
      String message,
      @Nullable String allowed,
      @Nullable String unit,
      @Nullable String hint) {
    String value = found == null ? null : MessageText.of(found);
    faults.add(new Problem(pointer, value, message, allowed, unit, hint));
  }

  /** Reports a word that is not one of those that may stand here. */
  void notOneOf(JsonNode found, String message, Collection<String> allowed) {
    String nearest = found.isString() ? MessageText.nearest(found.stringValue(), allowed) : null;
    fault(
        found,
        message,
        MessageText.list(allowed),
        null,
        nearest == null ? null : "did you mean \"" + nearest + "\"?");
  }
}
