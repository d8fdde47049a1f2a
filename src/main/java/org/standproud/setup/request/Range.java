package org.standproud.setup.request;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;
import org.standproud.setup.units.UnitSpelling;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plausible range of a quantity: outside it a number is a typo, not a set-up.
 *
 * @param kind what kind of quantity
 * @param least least plausible value in SI
 * @param greatest greatest plausible value in SI
 */
record Range(QuantityKind kind, double least, double greatest) {

  /** Room for the rounding of a limit that was converted to another unit. */
  private static final double ROUNDING = 1e-9;

  private static final List<String> EXACT_KEYS = List.of("value", "unit");
  private static final List<String> BAND_KEYS = List.of("low", "high", "likely", "unit");

  /** Reads a plain number in the caller's unit, or a value with its own unit. */
  @Nullable Double number(JsonNode node, FieldLocation place) {
    if (!node.isObject()) {
      return checked(node, kind.unit(place.units()), place);
    }
    if (node.has("low") && node.has("high")) {
      place.fault(node, "enter one number, not a range", allowed(place.units()), null, null);
      return null;
    }
    if (!onlyKeys(node, EXACT_KEYS, place)) {
      return null;
    }
    UnitCode unit = unit(node, place);
    JsonNode value = node.get("value");
    if (value == null) {
      place.child("value").fault(null, "the value is missing");
    }
    return unit == null || value == null ? null : checked(value, unit, place.child("value"));
  }

  /** Reads what {@link #number} reads, or a band with its low and high end. */
  @Nullable Band band(JsonNode node, FieldLocation place) {
    if (!node.isObject() || node.has("value")) {
      Double value = number(node, place);
      return value == null ? null : Band.exactly(value);
    }
    if (!onlyKeys(node, BAND_KEYS, place)) {
      return null;
    }
    UnitCode unit = unit(node, place);
    if (unit == null) {
      return null;
    }
    Double low = end(node, "low", unit, place);
    Double high = end(node, "high", unit, place);
    boolean midway = !node.hasNonNull("likely");
    Double likely = midway ? null : end(node, "likely", unit, place);
    if (low == null || high == null || (!midway && likely == null)) {
      return null;
    }
    return inOrder(low, likely, high, place, node);
  }

  private static @Nullable Band inOrder(
      double low, @Nullable Double likely, double high, FieldLocation place, JsonNode node) {
    if (low > high || (likely != null && (likely < low || likely > high))) {
      place.fault(node, "a range goes from low to high, with the likely value between them");
      return null;
    }
    return likely == null ? Band.between(low, high) : new Band(low, likely, high);
  }

  private @Nullable Double end(JsonNode node, String key, UnitCode unit, FieldLocation place) {
    JsonNode end = node.get(key);
    if (end == null) {
      place.child(key).fault(null, "a range needs low and high");
      return null;
    }
    return checked(end, unit, place.child(key));
  }

  private boolean onlyKeys(JsonNode node, List<String> keys, FieldLocation place) {
    boolean good = true;
    for (String key : node.propertyNames()) {
      if (!keys.contains(key)) {
        place
            .stranger(key)
            .fault(
                node.get(key),
                "a quantity has no such part",
                MessageText.list(keys),
                null,
                hint(key, keys));
        good = false;
      }
    }
    return good;
  }

  private static @Nullable String hint(String written, List<String> names) {
    String nearest = MessageText.nearest(written, names);
    return nearest == null ? null : "did you mean \"" + nearest + "\"?";
  }

  private @Nullable UnitCode unit(JsonNode node, FieldLocation place) {
    JsonNode written = node.get("unit");
    if (written == null) {
      return kind.unit(place.units());
    }
    List<String> fitting = UnitCode.codesOf(kind.dimension());
    UnitCode unit =
        written.isString()
            ? UnitSpelling.of(written.stringValue(), kind.dimension()).orElse(null)
            : null;
    if (unit == null) {
      place.child("unit").notOneOf(written, "this unit is not known", fitting);
      return null;
    }
    if (unit.dimension() != kind.dimension()) {
      String wanted = kind.dimension().name().toLowerCase(java.util.Locale.ROOT);
      String got = unit.dimension().name().toLowerCase(java.util.Locale.ROOT);
      place
          .child("unit")
          .fault(
              written,
              "this is a unit of " + got + ", but this field takes a " + wanted,
              MessageText.list(fitting),
              null,
              null);
      return null;
    }
    return unit;
  }

  private @Nullable Double checked(JsonNode node, UnitCode unit, FieldLocation place) {
    if (!node.isNumber()) {
      place.fault(node, notANumber(node), allowed(unit), unit.code(), null);
      return null;
    }
    double si = unit.toSi(node.numberValue().doubleValue());
    if (!Double.isFinite(si)) {
      place.fault(node, "this number is not finite", allowed(unit), unit.code(), null);
      return null;
    }
    if (!holds(si)) {
      place.fault(node, Problem.OUT_OF_RANGE, allowed(unit), unit.code(), null);
      return null;
    }
    return si;
  }

  private static String notANumber(JsonNode node) {
    try {
      if (node.isString()) {
        WrittenQuantity.of(node.stringValue());
      }
      return Problem.NO_NUMBER;
    } catch (WrittenQuantity.Unclear unclear) {
      return String.valueOf(unclear.getMessage());
    }
  }

  /** Whether an SI value is plausible. */
  boolean holds(double si) {
    return si >= least - ROUNDING * Math.abs(least)
        && si <= greatest + ROUNDING * Math.abs(greatest);
  }

  /** The range in words, in a unit. */
  String allowed(UnitCode unit) {
    return "from "
        + MessageText.of(unit.fromSi(least))
        + " to "
        + MessageText.of(unit.fromSi(greatest));
  }

  /** The range in words, in the unit that a caller would use, with the unit. */
  String allowed(UnitSystem units) {
    UnitCode unit = kind.unit(units);
    return allowed(unit) + (unit == UnitCode.ONE ? "" : " " + unit.code());
  }

  JsonNode write(double si, UnitSystem units) {
    return JsonNodeFactory.instance.numberNode(kind.unit(units).fromSi(si));
  }

  /** A band of no width as a plain number, any other by its ends. */
  JsonNode write(Band band, UnitSystem units) {
    return band.isExact() ? write(band.likely(), units) : writeEnds(band, units);
  }

  JsonNode writeEnds(Band band, UnitSystem units) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.set("low", write(band.low(), units));
    node.set("likely", write(band.likely(), units));
    node.set("high", write(band.high(), units));
    return node;
  }
}
