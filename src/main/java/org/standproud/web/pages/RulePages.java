package org.standproud.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.standproud.api.assessing.NotReady;
import org.standproud.api.problem.NotThere;
import org.standproud.api.shop.RuleShelf;
import org.standproud.rules.card.Protects;
import org.standproud.rules.engine.RuleBase;
import org.standproud.web.recorded.FindingView;

/** The rule cards in service, to be searched and read. */
@Controller
class RulePages {

  private final RuleShelf shelf;

  RulePages(RuleShelf shelf) {
    this.shelf = shelf;
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
    RuleView rule =
        inService().cards().stream()
            .filter(card -> card.id().equals(id))
            .findFirst()
            .map(RuleView::of)
            .orElseThrow(() -> new NotThere("No card in service has this id."));
    model.addAttribute("rule", rule);
    model.addAttribute("source", FindingView.line(rule.card().source()));
    model.addAttribute("revision", inService().revision());
    return "rule";
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
    return shelf.ruleBase().orElseThrow(() -> new NotReady("no rule base is in service"));
  }
}
