package org.standproud.api.rulebase;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.assessing.NotReady;
import org.standproud.api.problem.CardsRefused;
import org.standproud.api.problem.NotThere;
import org.standproud.api.shop.RuleShelf;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.GateResult;

/** The rule cards in service, and the way to have the folder read again. */
@Tag(name = "Rules", description = "The shop's rule cards.")
@RestController
@RequestMapping(path = "/v1/rules", produces = MediaType.APPLICATION_JSON_VALUE)
class RulesController {

  private final RuleShelf shelf;

  RulesController(RuleShelf shelf) {
    this.shelf = shelf;
  }

  /**
   * What came of reading the folder again.
   *
   * @param revision the revision now in service
   * @param changed whether it is another than before
   * @param rules how many cards it has
   */
  record Reloaded(String revision, boolean changed, int rules) {}

  @Operation(operationId = "listRules", summary = "The rule base in service")
  @ApiResponse(responseCode = "200", description = "Its revision and its cards.")
  @GetMapping
  RuleList rules() {
    return RuleList.of(inService());
  }

  @Operation(
      operationId = "getRule",
      summary = "A whole card",
      description = "Conditions in words, limits, source and examples.")
  @ApiResponse(responseCode = "200", description = "The card.")
  @GetMapping("/{id}")
  RuleCard rule(@PathVariable String id) {
    RuleBase base = inService();
    return base.cards().stream()
        .filter(card -> card.id().equals(id))
        .findFirst()
        .map(card -> RuleCard.of(base.revision().id(), card))
        .orElseThrow(() -> new NotThere("No card in service has this id."));
  }

  @Operation(
      operationId = "reloadRules",
      summary = "Read the folder of cards again",
      description =
          "Takes all cards through the gate: read, check, run every example. If one is refused, all"
              + " are, with every error by file, line and column, and the revision in service stays."
              + " Assessments under way finish on the revision they began with.")
  @ApiResponse(responseCode = "200", description = "The cards passed and serve.")
  @PostMapping("/reload")
  Reloaded reload() {
    String before = shelf.ruleBase().map(b -> b.revision().id()).orElse("");
    if (shelf.load() instanceof GateResult.Rejected rejected) {
      throw new CardsRefused(rejected.errors());
    }
    RuleBase now = inService();
    String revision = now.revision().id();
    return new Reloaded(revision, !revision.equals(before), now.cards().size());
  }

  private RuleBase inService() {
    return shelf.ruleBase().orElseThrow(() -> new NotReady("no rule base is in service"));
  }
}
