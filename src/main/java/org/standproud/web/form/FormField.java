package org.standproud.web.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One field of the form.
 *
 * @param path JSON Pointer of the field in the request; its name in the form
 * @param label its label
 * @param hint its meaning and allowed values
 * @param required whether it is required
 * @param options the choices; empty if it is typed
 * @param value its current value
 * @param error the error, if there is one
 */
public record FormField(
    String path,
    String label,
    String hint,
    boolean required,
    List<Option> options,
    String value,
    @Nullable String error) {

  /** Copies the list. */
  public FormField {
    options = List.copyOf(options);
  }

  /**
   * An option of a choice.
   *
   * @param value the submitted value
   * @param words the displayed words
   */
  public record Option(String value, String words) {}

  /** Its id in the page. */
  public String id() {
    return "f" + path.replace('/', '-');
  }

  /** Whether it is empty. */
  public boolean blank() {
    return value.isBlank();
  }

  /** Whether it takes text rather than a number, so that the keyboard needs letters. */
  public boolean lettered() {
    return path.startsWith("/job/");
  }

  /** Whether it is a choice. */
  public boolean picked() {
    return !options.isEmpty();
  }
}
