package org.standproud.api.rulebase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Expectation;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.Source;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;

/**
 * A whole card.
 *
 * @param ruleBase its revision of the rule base
 * @param card summary of the card
 * @param appliesTo the words each fact may have for the card to apply
 * @param limits its named limits as written
 * @param conditions its conditions; all must hold
 * @param derives the judgement it derives
 * @param changes its effect on another card's finding
 * @param speaksAbove the share of the draws above which it fires, 0 to 1
 * @param silencedBy ids of cards whose more severe finding means the same
 * @param message message for the machinist, with the names of facts in braces
 * @param remedy how to fix it
 * @param why the mechanism
 * @param source its source
 * @param examples its examples, which all run before the card goes into service
 */
record RuleCard(
    String ruleBase,
    RuleList.RuleLine card,
    Map<String, List<String>> appliesTo,
    Map<String, String> limits,
    List<RuleCondition> conditions,
    @Nullable String derives,
    @Nullable FindingChange changes,
    double speaksAbove,
    List<String> silencedBy,
    String message,
    String remedy,
    String why,
    Source source,
    List<RuleExample> examples) {

  /**
   * A condition.
   *
   * @param written the condition as written
   * @param words the condition in words, with the limits filled in
   */
  record RuleCondition(String written, String words) {}

  /**
   * The effect of a card on the finding of another.
   *
   * @param card the other card
   * @param to the new severity
   * @param because the reason
   */
  record FindingChange(String card, Severity to, String because) {}

  /**
   * An example that a card must get right.
   *
   * @param says the set-up in words
   * @param expect the result the card must have
   * @param base demonstration set-up it starts from
   * @param given values of facts
   */
  record RuleExample(
      String says, Expectation expect, @Nullable String base, Map<String, String> given) {

    static RuleExample of(Example example) {
      return new RuleExample(
          example.says().text(), example.expect(), text(example.base()), texts(example.given()));
    }
  }

  static RuleCard of(RuleBase ruleBase, CompiledCard compiled) {
    Card card = compiled.card();
    Map<String, List<String>> appliesTo = new LinkedHashMap<>();
    card.appliesTo()
        .forEach((fact, words) -> appliesTo.put(fact, words.stream().map(Written::text).toList()));
    return new RuleCard(
        ruleBase.revision().id(),
        RuleList.RuleLine.of(card),
        appliesTo,
        texts(card.limits()),
        conditions(compiled),
        text(card.derives()),
        changes(card),
        ruleBase.speaksAbove(compiled.id()),
        card.silencedBy().stream().map(Written::text).toList(),
        card.message().text(),
        card.remedy(),
        card.why(),
        card.source(),
        card.examples().stream().map(RuleExample::of).toList());
  }

  private static List<RuleCondition> conditions(CompiledCard compiled) {
    List<RuleCondition> conditions = new ArrayList<>();
    for (int i = 0; i < compiled.when().size(); i++) {
      conditions.add(
          new RuleCondition(
              compiled.card().when().get(i).text(), compiled.when().get(i).toWords()));
    }
    return conditions;
  }

  private static @Nullable FindingChange changes(Card card) {
    return card.change() == null
        ? null
        : new FindingChange(
            card.change().card().text(), card.change().to(), card.change().because());
  }

  private static @Nullable String text(@Nullable Written written) {
    return written == null ? null : written.text();
  }

  private static Map<String, String> texts(Map<String, Written> written) {
    Map<String, String> texts = new LinkedHashMap<>();
    written.forEach((name, value) -> texts.put(name, value.text()));
    return texts;
  }
}
