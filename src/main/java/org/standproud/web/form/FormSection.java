package org.standproud.web.form;

import java.util.List;
import java.util.Locale;

/**
 * Fields that belong together.
 *
 * @param title what they describe
 * @param folded whether the section can be folded
 * @param open whether it is open now
 * @param fields the fields
 * @param inner sections inside this one
 */
public record FormSection(
    String title, boolean folded, boolean open, List<FormField> fields, List<FormSection> inner) {

  /** Copies the lists. */
  public FormSection {
    fields = List.copyOf(fields);
    inner = List.copyOf(inner);
  }

  /** The title, capitalized. */
  public String heading() {
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }
}
