package org.standproud.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;

/**
 * A rule card as its page shows it.
 *
 * @param card the card as written
 * @param role flags a set-up, derives a judgement, eases or overrides another's finding
 * @param conditions its conditions in words; all must hold
 * @param appliesTo the words each fact may have for the card to apply
 * @param limits its named limits as written
 * @param examples its examples
 */
public record RuleView(
    Card card,
    String role,
    List<String> conditions,
    Map<String, String> appliesTo,
    Map<String, String> limits,
    List<ExampleView> examples) {

  /**
   * An example.
   *
   * @param says the set-up in words
   * @param expect the result the card must have
   * @param given values of facts
   */
  public record ExampleView(String says, String expect, String given) {

    static ExampleView of(Example example) {
      List<String> given = new ArrayList<>();
      Written start = example.base();
      if (start != null) {
        given.add("set-up " + start.text());
      }
      example.given().forEach((fact, value) -> given.add(fact + ": " + value.text()));
      return new ExampleView(
          example.says().text(), example.expect().words(), String.join("; ", given));
    }
  }

  /** The view of a card in service. */
  static RuleView of(CompiledCard compiled) {
    Card card = compiled.card();
    Map<String, String> applies = new LinkedHashMap<>();
    card.appliesTo()
        .forEach(
            (fact, words) ->
                applies.put(
                    fact, words.stream().map(Written::text).collect(Collectors.joining(" or "))));
    Map<String, String> limits = new LinkedHashMap<>();
    card.limits().forEach((name, value) -> limits.put(name, value.text()));
    return new RuleView(
        card,
        role(card),
        compiled.when().stream().map(condition -> condition.toWords()).toList(),
        applies,
        limits,
        card.examples().stream().map(ExampleView::of).toList());
  }

  private static String role(Card card) {
    @Nullable SeverityChange change = card.change();
    if (change != null) {
      String does = change.overrides() ? "sets " : "eases ";
      return does + change.card().text() + " to a " + change.to().words();
    }
    Written derives = card.derives();
    return derives == null ? "flags a set-up" : "helper rule: " + derives.text();
  }

  /** The id. */
  public String id() {
    return card.id().text();
  }

  /** The judgement it derives; empty if none. */
  public String derived() {
    Written derives = card.derives();
    return derives == null ? "" : derives.text();
  }

  /** Whether every search word occurs in the text of the card. */
  boolean speaksOf(String asked) {
    String all =
        String.join(
            " ",
            id(),
            card.title(),
            card.message().text(),
            card.remedy(),
            card.why(),
            String.join(" ", conditions));
    String text = all.toLowerCase(Locale.ROOT);
    return List.of(asked.toLowerCase(Locale.ROOT).strip().split("\\s+")).stream()
        .allMatch(text::contains);
  }
}
