package org.standproud.api.rulebase;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.publishing.CardEdit;

/**
 * The body of a change of cards.
 *
 * @param files the text of each card file by path; null deletes the file
 * @param onto the revision it is based on
 * @param author its author
 * @param note why
 * @param setup a set-up to try it on
 * @param record an assessment to try it on
 */
record EditBody(
    @Nullable Map<String, @Nullable String> files,
    @Nullable String onto,
    @Nullable String author,
    @Nullable String note,
    @Nullable Map<String, Object> setup,
    @Nullable UUID record) {

  CardEdit edit() {
    Map<String, String> written = new HashMap<>();
    Set<String> removed = new HashSet<>();
    if (files != null) {
      files.forEach(
          (file, text) -> {
            if (text == null) {
              removed.add(file);
            } else {
              written.put(file, text);
            }
          });
    }
    return new CardEdit(written, removed, onto);
  }
}
