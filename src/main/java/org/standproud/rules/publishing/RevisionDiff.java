package org.standproud.rules.publishing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Written;

/**
 * The differences between two revisions; layout and comments are ignored.
 *
 * @param added ids of the cards only in the later one
 * @param removed ids of the cards only in the earlier one
 * @param changed the changed parts of each card in both, by id
 */
public record RevisionDiff(
    List<String> added, List<String> removed, Map<String, List<PartChange>> changed) {

  /** Copies the collections. */
  public RevisionDiff {
    added = List.copyOf(added);
    removed = List.copyOf(removed);
    changed = java.util.Collections.unmodifiableMap(new TreeMap<>(changed));
  }

  /**
   * A part of a card that changed.
   *
   * @param field the part
   * @param before the text before; empty if it did not exist
   * @param after the text now; empty if it was removed
   */
  public record PartChange(String field, String before, String after) {}

  /** Whether there are no differences. */
  public boolean nothing() {
    return added.isEmpty() && removed.isEmpty() && changed.isEmpty();
  }

  /**
   * Compares two sets of cards.
   *
   * @param before the cards of the earlier revision
   * @param after the cards of the later one
   */
  public static RevisionDiff between(List<Card> before, List<Card> after) {
    Map<String, Card> old = byId(before);
    Map<String, Card> now = byId(after);
    List<String> added = now.keySet().stream().filter(id -> !old.containsKey(id)).toList();
    List<String> removed = old.keySet().stream().filter(id -> !now.containsKey(id)).toList();
    Map<String, List<PartChange>> changed = new TreeMap<>();
    now.forEach(
        (id, card) -> {
          Card was = old.get(id);
          List<PartChange> changes = was == null ? List.of() : changes(was, card);
          if (!changes.isEmpty()) {
            changed.put(id, changes);
          }
        });
    return new RevisionDiff(added, removed, changed);
  }

  private static Map<String, Card> byId(List<Card> cards) {
    return cards.stream()
        .collect(Collectors.toMap(c -> c.id().text(), c -> c, (a, b) -> b, TreeMap::new));
  }

  private static List<PartChange> changes(Card before, Card after) {
    Map<String, String> old = fields(before);
    Map<String, String> now = fields(after);
    List<PartChange> changes = new ArrayList<>();
    Map<String, String> all = new LinkedHashMap<>(old);
    now.forEach(all::putIfAbsent);
    for (String field : all.keySet()) {
      String was = old.getOrDefault(field, "");
      String is = now.getOrDefault(field, "");
      if (!was.equals(is)) {
        changes.add(new PartChange(field, was, is));
      }
    }
    return changes;
  }

  private static Map<String, String> fields(Card card) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("title", card.title());
    fields.put("protects", card.protects().words());
    fields.put("severity", card.severity().words());
    fields.put("confidence", card.confidence().words());
    fields.put("source", source(card));
    fields.put("since", card.since());
    fields.put("revised", card.revised());
    fields.put("owner", card.owner());
    card.appliesTo()
        .forEach((fact, words) -> fields.put("appliesTo " + fact, lines(words, " or ")));
    card.limits().forEach((name, value) -> fields.put("limit " + name, value.text()));
    fields.put("when", lines(card.when(), "\n"));
    fields.put("derives", card.derives() == null ? "" : card.derives().text());
    fields.put("changes", change(card));
    fields.put("speaks above", card.speaksAbove() == null ? "" : 100 * card.speaksAbove() + " %");
    fields.put("silenced by", lines(card.silencedBy(), ", "));
    fields.put("message", card.message().text());
    fields.put("remedy", card.remedy());
    fields.put("why", card.why());
    fields.put(
        "examples",
        card.examples().stream().map(RevisionDiff::example).collect(Collectors.joining("\n")));
    return fields;
  }

  private static String source(Card card) {
    return card.source().kind().words()
        + ": "
        + List.of(card.source().reference(), card.source().edition(), card.source().page()).stream()
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining(", "));
  }

  private static String change(Card card) {
    return card.change() == null
        ? ""
        : (card.change().overrides() ? "overrides " : "eases ")
            + card.change().card().text()
            + " to "
            + card.change().to().words()
            + ": "
            + card.change().because();
  }

  private static String example(Example example) {
    return example.expect().words()
        + ": "
        + example.says().text()
        + (example.base() == null ? "" : " on " + example.base().text())
        + " "
        + new TreeMap<>(example.given())
            .entrySet().stream().map(e -> e.getKey() + ": " + e.getValue().text()).toList();
  }

  private static String lines(List<Written> texts, String between) {
    return texts.stream().map(Written::text).collect(Collectors.joining(between));
  }
}
