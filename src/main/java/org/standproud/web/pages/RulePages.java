package org.standproud.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.standproud.assessment.NotReadyException;
import org.standproud.audit.records.RecordQuery;
import org.standproud.audit.records.Records;
import org.standproud.audit.records.RuleUse;
import org.standproud.refusal.NotFoundException;
import org.standproud.rules.card.Protects;
import org.standproud.rules.engine.CompiledCard;
import org.standproud.rules.engine.RuleBase;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.web.recorded.FindingView;

/** The rule cards in service, to search and read. */
@Controller
class RulePages {

  private final RuleBaseHolder shelf;
  private final Records records;

  RulePages(RuleBaseHolder shelf, Records records) {
    this.shelf = shelf;
    this.records = records;
  }

  @GetMapping("/rules")
  String rules(
      @RequestParam(defaultValue = "") String q,
      @RequestParam(required = false) @Nullable Protects protects,
      Model model) {
    RuleBase base = inService();
    List<RuleView> found =
        base.cards().stream()
            .map(RuleView::of)
            .filter(rule -> protects == null || rule.card().protects() == protects)
            .filter(rule -> q.isBlank() || rule.speaksOf(q))
            .toList();
    model.addAttribute("revision", base.revision());
    model.addAttribute("groups", grouped(found));
    model.addAttribute("count", found.size());
    model.addAttribute("q", q);
    model.addAttribute("protects", protects == null ? "" : protects.words());
    model.addAttribute("choices", List.of(Protects.values()));
    return "rules";
  }

  @GetMapping("/rules/{id}")
  String rule(@PathVariable String id, Model model) {
    List<CompiledCard> cards = inService().cards();
    CompiledCard card =
        cards.stream()
            .filter(c -> c.id().equals(id))
            .findFirst()
            .orElseThrow(() -> new NotFoundException("No live rule has this id."));
    RuleView rule = RuleView.of(card);
    model.addAttribute("behind", behind(card, cards));
    model.addAttribute("rule", rule);
    model.addAttribute("source", FindingView.line(rule.card().source()));
    model.addAttribute("revision", inService().revision());
    model.addAttribute("use", use(id));
    return "rule";
  }

  /** The cards that derive a judgement which a card reads. */
  private static List<RuleView> behind(CompiledCard card, List<CompiledCard> cards) {
    List<String> judgements = card.judgements();
    return cards.stream()
        .map(RuleView::of)
        .filter(rule -> judgements.contains(rule.derived()))
        .toList();
  }

  private @Nullable RuleUse use(String card) {
    return records.useOfRules(RecordQuery.all(), Set.of(card)).stream()
        .filter(use -> use.cardId().equals(card))
        .findFirst()
        .orElse(null);
  }

  private static Map<String, List<RuleView>> grouped(List<RuleView> rules) {
    Map<String, List<RuleView>> groups = new LinkedHashMap<>();
    for (Protects protects : Protects.values()) {
      List<RuleView> of = rules.stream().filter(r -> r.card().protects() == protects).toList();
      if (!of.isEmpty()) {
        groups.put(protects.words(), of);
      }
    }
    return groups;
  }

  private RuleBase inService() {
    return shelf.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service"));
  }
}
