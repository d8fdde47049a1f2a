package org.standproud.web.words;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** The messages of the pages in the reader's language. */
@Component
public class PageWords {

  private final MessageSource messages;

  /** Words out of a catalogue of messages. */
  public PageWords(MessageSource messages) {
    this.messages = messages;
  }

  /**
   * A message that must exist.
   *
   * @param key its key
   * @param values its arguments
   */
  public String of(String key, Object... values) {
    return messages.getMessage(key, values, LocaleContextHolder.getLocale());
  }

  /**
   * A message that may exist.
   *
   * @param key its key
   * @param otherwise the default
   */
  public String or(String key, String otherwise) {
    @Nullable String found =
        messages.getMessage(key, null, otherwise, LocaleContextHolder.getLocale());
    return found == null ? otherwise : found;
  }

  /**
   * The words of a choice, such as {@code left to right} for {@code +x}.
   *
   * @param path the field, as a JSON Pointer
   * @param word the choice, as in a request
   */
  public String choice(String path, String word) {
    return or("choice" + dotted(path) + "." + word.replace(' ', '-'), word);
  }

  /** A path as part of a key, without list indices. */
  public static String dotted(String path) {
    return path.replaceAll("/(?:[0-9]+|\\*)(?=/|$)", "").replace('/', '.');
  }
}
