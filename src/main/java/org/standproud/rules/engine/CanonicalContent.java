package org.standproud.rules.engine;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Written;

/**
 * The content of cards as bytes that do not depend on layout, comments, file names or the order of
 * files. Every text is prefixed with its length, so different contents have different bytes.
 */
final class CanonicalContent {

  private final StringBuilder out = new StringBuilder();

  private CanonicalContent() {}

  static String hash(List<Card> cards, Levels levels) {
    CanonicalContent content = new CanonicalContent();
    for (Severity severity : Severity.values()) {
      content.put(Double.toString(levels.of(severity)));
    }
    content.put(levels.source());
    cards.stream().sorted(Comparator.comparing(c -> c.id().text())).forEach(content::card);
    return content.sha256();
  }

  static Revision revision(List<Card> cards, Levels levels, Authorship by) {
    String contentHash = hash(cards, levels);
    CanonicalContent content = new CanonicalContent();
    content.put(contentHash, by.author(), by.note(), by.time().toString());
    content.optional(by.parent());
    return new Revision(
        content.sha256(), contentHash, by.author(), by.note(), by.time(), by.parent());
  }

  private void card(Card card) {
    put(card.id().text(), card.title(), card.protects().words());
    put(card.severity().words(), card.confidence().words());
    put(card.source().kind().words(), card.source().reference());
    put(card.source().edition(), card.source().page());
    put(card.since(), card.revised(), card.owner());
    count(card.appliesTo().size());
    new TreeMap<>(card.appliesTo())
        .forEach(
            (fact, words) -> {
              put(fact);
              list(words);
            });
    count(card.limits().size());
    new TreeMap<>(card.limits()).forEach((name, value) -> put(name, value.text()));
    list(card.when());
    optional(card.derives() == null ? null : card.derives().text());
    if (card.change() != null) {
      put(card.change().overrides() ? "overrides" : "eases", card.change().card().text());
      put(card.change().to().words(), card.change().because());
    }
    optional(card.speaksAbove() == null ? null : Double.toString(card.speaksAbove()));
    list(card.silencedBy());
    put(card.message().text(), card.remedy(), card.why());
    count(card.examples().size());
    card.examples().forEach(this::example);
  }

  private void example(Example example) {
    put(example.says().text(), example.expect().words());
    optional(example.base() == null ? null : example.base().text());
    count(example.given().size());
    new TreeMap<>(example.given()).forEach((fact, value) -> put(fact, value.text()));
  }

  private void list(List<Written> texts) {
    count(texts.size());
    texts.forEach(t -> put(t.text()));
  }

  private void count(int n) {
    out.append('#').append(n).append(';');
  }

  private void optional(@Nullable String text) {
    if (text == null) {
      out.append('-');
    } else {
      put(text);
    }
  }

  private void put(String... texts) {
    for (String text : texts) {
      out.append(text.length()).append(':').append(text);
    }
  }

  private String sha256() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of()
          .formatHex(digest.digest(out.toString().getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
