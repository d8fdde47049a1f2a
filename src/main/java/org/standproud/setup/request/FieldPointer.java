package org.standproud.setup.request;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a field of the request stands, as a JSON Pointer (RFC 6901), such as {@code
 * /hold/gripDepth}. Made from a field, so that it cannot name one that no request has.
 */
public final class FieldPointer {

  /** Stands for every place of a field that a request has at several places. */
  private static final FieldPointer SEVERAL = new FieldPointer("");

  private static final Map<Field<?, ?>, FieldPointer> PLACES = places();

  private final String text;

  private FieldPointer(String text) {
    this.text = text;
  }

  /**
   * The place of a field in a request.
   *
   * @param field a field of the request
   * @throws IllegalArgumentException if a request has it at no place, or at several: inside the
   *     items of a list, or in both cutting ranges of a material
   */
  public static FieldPointer to(Field<?, ?> field) {
    FieldPointer place = PLACES.get(field);
    if (place == null || place == SEVERAL) {
      throw new IllegalArgumentException("a request has no one place for " + field.name());
    }
    return place;
  }

  /**
   * A place as a record kept it.
   *
   * @param text a pointer; a path with dots in records of versions before 0.4.0
   */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static FieldPointer recorded(String text) {
    return new FieldPointer(text);
  }

  /** The pointer. */
  @JsonValue
  public String text() {
    return text;
  }

  /** The place at a pointer that was put together from fields. */
  static FieldPointer at(String text) {
    return new FieldPointer(text);
  }

  private static Map<Field<?, ?>, FieldPointer> places() {
    Map<Field<?, ?>, FieldPointer> places = new IdentityHashMap<>();
    collect("", RequestFields.SHAPE.fields(), places);
    return places;
  }

  private static <O> void collect(
      String above, List<Field<O, ?>> fields, Map<Field<?, ?>, FieldPointer> into) {
    for (Field<O, ?> field : fields) {
      String here = above + "/" + field.name();
      into.merge(field, new FieldPointer(here), (one, other) -> SEVERAL);
      if (field instanceof ObjectField<?, ?> part) {
        collect(here, part.shape().fields(), into);
      }
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FieldPointer pointer && text.equals(pointer.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
