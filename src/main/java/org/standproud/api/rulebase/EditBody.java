package org.standproud.api.rulebase;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.publishing.CardEdit;

/**
 * A change of cards. Each operation describes the fields it needs.
 *
 * @param files the text of each new or changed card file by its path, such as
 *     holding/HOLD-001.yaml; null deletes the file. All other cards stay as they are.
 * @param onto the revision it is based on; refused as a conflict if another was published since
 * @param author the author, if the service does not know the caller
 * @param note the reason, in one sentence
 * @param setup a set-up to try the cards on
 * @param record an assessment on whose evidence to try the cards
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
