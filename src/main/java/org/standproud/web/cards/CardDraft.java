package org.standproud.web.cards;

import java.security.Principal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.standproud.rules.publishing.CardEdit;

/**
 * A card in the editor, with the fields of its form.
 *
 * @param file path of its file
 * @param text the card as typed
 * @param onto the revision it is based on; empty if there was none
 * @param author its author
 * @param note the reason
 * @param on demonstration set-up to try it on; empty for none
 * @param record id of a recorded assessment to try it on; empty for none
 */
public record CardDraft(
    String file, String text, String onto, String author, String note, String on, String record) {

  /** An unedited draft. */
  static CardDraft of(String file, String text, String onto) {
    return new CardDraft(file, text, onto, "", "", "", "");
  }

  /**
   * Reads the submitted form.
   *
   * @param sent the fields of the form
   * @param caller the caller
   */
  static CardDraft of(Map<String, String> sent, Principal caller) {
    return new CardDraft(
        field(sent, "file"),
        sent.getOrDefault("text", "").replace("\r\n", "\n"),
        field(sent, "onto"),
        Author.of(caller, field(sent, "author")),
        field(sent, "note"),
        field(sent, "on"),
        field(sent, "record"));
  }

  private static String field(Map<String, String> sent, String name) {
    return sent.getOrDefault(name, "").strip();
  }

  /** Converts it to a change; empty text removes the card. */
  CardEdit edit() {
    String against = onto.isEmpty() ? null : onto;
    return text.isBlank()
        ? new CardEdit(Map.of(), Set.of(file), against)
        : new CardEdit(Map.of(file, text), Set.of(), against);
  }

  /** Errors that prevent submission, by the name of the field. */
  Map<String, String> unsigned() {
    Map<String, String> faults = new LinkedHashMap<>();
    if (author.isEmpty()) {
      faults.put("author", "Enter your name");
    }
    if (note.isEmpty()) {
      faults.put("note", "Enter the reason");
    }
    return faults;
  }
}
