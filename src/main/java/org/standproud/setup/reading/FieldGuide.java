package org.standproud.setup.reading;

import java.util.ArrayList;
import java.util.List;
import org.standproud.setup.UnitSystem;

/** Every field of a request with what may stand there, for documentation. */
public final class FieldGuide {

  private FieldGuide() {}

  /**
   * One field.
   *
   * @param path where it stands, as a JSON Pointer; {@code *} stands for an item of a list
   * @param meaning what it means
   * @param required whether it has to be given
   * @param allowed what may stand there
   */
  public record Entry(String path, String meaning, boolean required, String allowed) {}

  /**
   * All fields, each before the fields inside it.
   *
   * @param units the system in which ranges are told
   */
  public static List<Entry> entries(UnitSystem units) {
    List<Entry> entries = new ArrayList<>();
    walk("", RequestFields.SHAPE, units, entries);
    return entries;
  }

  private static void walk(String above, Shape<?> shape, UnitSystem units, List<Entry> into) {
    for (Field<?, ?> field : shape.fields()) {
      String path = above + "/" + field.name();
      into.add(new Entry(path, field.meaning(), field.required(), field.allowed(units)));
      if (field instanceof Part<?, ?> part) {
        walk(path, part.shape(), units, into);
      } else if (field instanceof Parts<?, ?> parts) {
        walk(path + "/*", parts.shape(), units, into);
      }
    }
  }
}
