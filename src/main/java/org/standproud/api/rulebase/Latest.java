package org.standproud.api.rulebase;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.rules.publishing.StoredRevision;

/**
 * The cards last published, to which a change is applied.
 *
 * @param id id of their revision, or null if there is none
 * @param files the text of each file by its path
 */
record Latest(@Nullable String id, Map<String, String> files) {

  static Latest at(RuleBasePublisher desk) {
    String id = desk.latest().map(StoredRevision::id).orElse(null);
    return new Latest(id, id == null ? Map.of() : desk.files(id).orElseGet(Map::of));
  }

  /** The path of the file of a card. */
  Optional<String> file(String card) {
    return files.entrySet().stream()
        .filter(f -> isCard(card, CardReader.read(f.getKey(), f.getValue()).card()))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static boolean isCard(String id, @Nullable Card card) {
    return card != null && card.id().text().equals(id);
  }
}
