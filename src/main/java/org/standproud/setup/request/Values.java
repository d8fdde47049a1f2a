package org.standproud.setup.request;

import java.util.IdentityHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was read of one object so far: a value a field, none where it is unknown or was at fault.
 */
final class Values {

  private final Map<Field<?, ?>, Object> byField = new IdentityHashMap<>();

  <T> void put(Field<?, T> field, @Nullable T value) {
    if (value == null) {
      byField.remove(field);
    } else {
      byField.put(field, value);
    }
  }

  boolean has(Field<?, ?> field) {
    return byField.containsKey(field);
  }

  @SuppressWarnings("unchecked") // put only takes values of the field's type
  <T> @Nullable T get(Field<?, T> field) {
    return (T) byField.get(field);
  }

  /**
   * The value of a field that reading has made sure of.
   *
   * @throws IllegalStateException if it is not there: a fault of this program, not of the request
   */
  <T> T need(Field<?, T> field) {
    T value = get(field);
    if (value == null) {
      throw new IllegalStateException("no value was read for " + field.name());
    }
    return value;
  }
}
