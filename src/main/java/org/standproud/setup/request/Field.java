package org.standproud.setup.request;

import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import tools.jackson.databind.JsonNode;

/**
 * The one description of a field: it reads, checks, writes and documents it.
 *
 * @param <O> the record that owns the field
 * @param <T> the value of the field
 */
public sealed interface Field<O, T>
    permits Quantity,
        BandField,
        Quantities,
        Count,
        Counts,
        Choice,
        BooleanField,
        Text,
        ObjectField,
        ListField,
        ItemList {

  /** What stands in a request for a value that is not known, as null does. */
  String UNKNOWN = "unknown";

  /** Name in the request. */
  String name();

  /**
   * Whether it has to be given; if not, null or {@link #UNKNOWN} says that it is not known, and so
   * does leaving it out unless a catalogue item has it.
   */
  boolean required();

  /** Whether a node is the word for a value that is not known; a free text may be that word. */
  default boolean isUnknown(JsonNode node) {
    return !(this instanceof Text)
        && node.isString()
        && node.stringValue().strip().equalsIgnoreCase(UNKNOWN);
  }

  /** Its short name in the trade, such as grip depth. */
  default String label() {
    String title = title();
    return title == null ? MessageText.spoken(name()) : title;
  }

  /** The short name where it is not the name in words; null where it is. */
  default @Nullable String title() {
    return null;
  }

  /** What it means, in one phrase. */
  String meaning();

  /** The value in a record that was read before; null if unknown there. */
  @Nullable T from(O owner);

  /** The value in a record as the record keeps it. */
  default @Nullable Object kept(O owner) {
    return from(owner);
  }

  /** This field if it is an object with fields of its own; null if it is not. */
  default @Nullable ObjectField<O, ?> part() {
    return null;
  }

  /**
   * Reads and checks.
   *
   * @param node what stands there, neither missing nor null
   * @param place where it stands; problems are reported to it
   * @return the value in SI units, or null if there was a problem
   */
  @Nullable T read(JsonNode node, FieldLocation place);

  /** The value as it would stand in a request. */
  JsonNode write(T value, UnitSystem units);

  /** What may stand there, for messages and documentation. */
  String allowed(UnitSystem units);
}
