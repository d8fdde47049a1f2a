package org.standproud.web.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One field of the form.
 *
 * @param path where it stands in the request, as a JSON Pointer; its name in the form
 * @param label what it is called
 * @param hint what it means and what may stand there
 * @param required whether it has to be given
 * @param options what can be picked; empty if it is typed
 * @param value what stands there
 * @param error what is wrong with that, if something is
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
   * Something to pick.
   *
   * @param value what is sent
   * @param words what is read
   */
  public record Option(String value, String words) {}

  /** Its id in the page. */
  public String id() {
    return "f" + path.replace('/', '-');
  }

  /** Whether nothing stands there. */
  public boolean blank() {
    return value.isBlank();
  }

  /** Whether text is typed there and not a number, so that letters are needed. */
  public boolean lettered() {
    return path.startsWith("/job/");
  }

  /** Whether something can be picked. */
  public boolean picked() {
    return !options.isEmpty();
  }
}
