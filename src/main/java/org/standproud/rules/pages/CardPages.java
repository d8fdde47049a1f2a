package org.standproud.rules.pages;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardLimits;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Protects;
import org.standproud.rules.card.Severity;
import org.standproud.rules.card.SeverityChange;
import org.standproud.rules.card.Written;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.language.ConditionSize;
import org.standproud.rules.language.ConditionText;
import org.standproud.rules.trace.Kind;

/** Writes the pages of a rule base in Markdown; the same cards always give the same pages. */
public final class CardPages {

  private final RuleBase ruleBase;
  private final Gate gate;

  /**
   * Pages of one rule base.
   *
   * @param ruleBase the rule base
   * @param gate the gate it passed, which runs its examples
   */
  public CardPages(RuleBase ruleBase, Gate gate) {
    this.ruleBase = ruleBase;
    this.gate = gate;
  }

  /** Every page by the name of its file. */
  public Map<String, String> all() {
    Map<String, String> pages = new TreeMap<>();
    ruleBase.cards().forEach(card -> pages.put(card.id() + ".md", page(card)));
    pages.put("README.md", index());
    return pages;
  }

  private String page(CompiledCard compiled) {
    Card card = compiled.card();
    List<String> lines = new ArrayList<>();
    lines.add("# " + compiled.id() + ": " + card.title());
    lines.add("");
    lines.add(
        role(card)
            + " Confidence: "
            + card.confidence().words()
            + ". Protects: "
            + link(card.protects())
            + ". Owner: "
            + card.owner()
            + ". In force since "
            + card.since()
            + (card.revised().isEmpty() ? "." : ", revised " + card.revised() + "."));
    conditions(compiled, lines);
    level(compiled, lines);
    findings(card, lines);
    lines.add("");
    lines.add("## Why");
    lines.add("");
    lines.add(card.why());
    lines.add("");
    lines.add("Source (" + card.source().kind().words() + "): " + source(card));
    examples(compiled, lines);
    return String.join("\n", lines) + "\n";
  }

  private static String link(Protects protects) {
    return "[" + protects.words() + "](README.md#" + protects.words() + ")";
  }

  private static String role(Card card) {
    SeverityChange change = card.change();
    if (change != null) {
      return (change.overrides() ? "Sets " : "Eases ")
          + to(change.card().text())
          + " to **"
          + change.to().words()
          + "**, because "
          + change.because()
          + ".";
    }
    return card.derives() != null
        ? "Derives the judgement **" + card.derives().text() + "**, which other cards may read."
        : "Severity: **" + card.severity().words() + "**.";
  }

  private static String to(String id) {
    return "[" + id + "](" + id + ".md)";
  }

  private void conditions(CompiledCard compiled, List<String> lines) {
    lines.add("");
    lines.add("## When");
    lines.add("");
    compiled.scope().forEach(c -> lines.add("- " + c.toWords() + " (applies to)"));
    compiled.when().forEach(c -> lines.add("- " + c.toWords()));
    List<String> read = compiled.judgements().stream().map(this::judgement).toList();
    if (!read.isEmpty()) {
      lines.add("");
      lines.add("Judged elsewhere: " + String.join(", ", read) + ".");
    }
    if (!compiled.limits().isEmpty()) {
      lines.add("");
      lines.add("| limit | value |");
      lines.add("|---|---|");
      compiled
          .limits()
          .forEach((name, limit) -> lines.add("| " + name + " | " + limit.text() + " |"));
    }
  }

  private void level(CompiledCard compiled, List<String> lines) {
    if (!compiled.card().flags()) {
      return;
    }
    lines.add("");
    lines.add(
        "Speaks when this holds in more than "
            + percent(ruleBase.speaksAbove(compiled.id()))
            + " of the draws"
            + (compiled.card().speaksAbove() == null ? "." : ", a level of its own."));
    List<String> silencers =
        compiled.card().silencedBy().stream().map(id -> to(id.text())).toList();
    if (!silencers.isEmpty()) {
      lines.add("");
      lines.add("Says nothing where one of these speaks: " + String.join(", ", silencers) + ".");
    }
  }

  private static String percent(double share) {
    return BigDecimal.valueOf(100 * share).stripTrailingZeros().toPlainString() + " %";
  }

  private String judgement(String name) {
    return ruleBase.cards().stream()
        .filter(c -> c.card().derives() != null && c.card().derives().text().equals(name))
        .map(c -> name + " by " + to(c.id()))
        .collect(Collectors.joining());
  }

  private static void findings(Card card, List<String> lines) {
    if (!card.message().text().isEmpty()) {
      lines.add("");
      lines.add("## Says");
      lines.add("");
      lines.add("> " + card.message().text());
    }
    if (!card.remedy().isEmpty()) {
      lines.add("");
      lines.add("To put it right: " + card.remedy());
    }
  }

  private static String source(Card card) {
    String named =
        Stream.of(card.source().reference(), card.source().edition(), card.source().page())
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining(", "));
    return named.isEmpty() ? "none named." : named + ".";
  }

  private void examples(CompiledCard compiled, List<String> lines) {
    lines.add("");
    lines.add("## Examples");
    lines.add("");
    lines.add("| set-up | given | result |");
    lines.add("|---|---|---|");
    for (Gate.Ran ran : gate.run(ruleBase, compiled)) {
      String given =
          ran.example().given().entrySet().stream()
              .map(e -> e.getKey() + ": " + e.getValue().text())
              .collect(Collectors.joining(", "));
      Written base = ran.example().base();
      lines.add(
          "| "
              + ran.example().says().text()
              + " | "
              + (base == null ? "" : base.text() + (given.isEmpty() ? "" : ", with "))
              + given
              + " | "
              + result(ran)
              + " |");
    }
  }

  private static String result(Gate.Ran ran) {
    if (ran.trace() == null || !ran.errors().isEmpty()) {
      return "**refused**";
    }
    return ran.trace().kind() == Kind.INFORMATIONAL ? "holds" : ran.trace().kind().words();
  }

  private String index() {
    List<String> lines = new ArrayList<>();
    lines.add("# Rule cards");
    lines.add("");
    lines.add(
        "Made from the cards under `rules/` by `rules pages`; edit the cards, not the pages. The"
            + " [guide](../rule-author-guide.md) explains how to edit a card.");
    for (Protects protects : Protects.values()) {
      lines.add("");
      lines.add("## " + protects.words());
      lines.add("");
      lines.add("| card | claim | severity |");
      lines.add("|---|---|---|");
      ruleBase.cards().stream()
          .filter(c -> c.card().protects() == protects)
          .forEach(
              c ->
                  lines.add(
                      "| "
                          + to(c.id())
                          + " | "
                          + c.card().title()
                          + " | "
                          + inShort(c.card())
                          + " |"));
    }
    levels(lines);
    limits(lines);
    return String.join("\n", lines) + "\n";
  }

  private static String inShort(Card card) {
    if (card.change() != null) {
      return (card.change().overrides() ? "sets " : "eases ") + to(card.change().card().text());
    }
    return card.derives() != null ? "derives " + card.derives().text() : card.severity().words();
  }

  private void levels(List<String> lines) {
    lines.add("");
    lines.add("## When a card speaks");
    lines.add("");
    lines.add("| finding | speaks above this share of the draws |");
    lines.add("|---|---|");
    for (Severity severity : Severity.values()) {
      double share = ruleBase.levels().of(severity);
      lines.add("| " + severity.words() + " | " + percent(share) + " |");
    }
    lines.add("");
    lines.add("From `" + Levels.FILE + "`. Source: " + ruleBase.levels().source() + ".");
  }

  private static void limits(List<String> lines) {
    lines.add("");
    lines.add("## What a card may not exceed");
    lines.add("");
    lines.add("| | at most |");
    lines.add("|---|---|");
    lines.add("| characters in a card | " + CardLimits.MAX_CARD_LENGTH + " |");
    lines.add("| characters in a text | " + CardLimits.MAX_TEXT_LENGTH + " |");
    lines.add(
        "| characters in a name, a number or a quantity | " + CardLimits.MAX_NAME_LENGTH + " |");
    lines.add("| levels of nesting | " + CardLimits.MAX_DEPTH + " |");
    lines.add("| values in a card | " + CardLimits.MAX_VALUES + " |");
    lines.add("| conditions in a card | " + CardLimits.MAX_CONDITIONS + " |");
    lines.add("| characters in a condition | " + ConditionText.MAX_LENGTH + " |");
    lines.add("| steps to evaluate a condition | " + ConditionSize.MOST + " |");
    lines.add("| brackets inside brackets in a condition | " + ConditionText.MAX_NESTING + " |");
    lines.add("| limits in a card | " + CardLimits.MAX_LIMITS + " |");
    lines.add("| examples in a card | " + CardLimits.MAX_EXAMPLES + " |");
    lines.add("| cards in a rule base | " + CardLimits.MAX_CARDS + " |");
    lines.add("");
    lines.add(
        "Anchors, aliases, tags, a key written twice and a second document in the file are refused."
            + " A card can compare numbers and words and nothing else: it reaches no file, no"
            + " network and no program.");
  }
}
