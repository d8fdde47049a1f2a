package org.standproud.shop;

import java.util.List;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.stereotype.Component;
import org.standproud.rules.card.CardError;
import org.standproud.rules.engine.Revision;

/** Ready only with a catalogue and a rule base in service; otherwise gives the reason. */
@Component("ruleBase")
class RuleBaseHealth implements HealthIndicator {

  private final RuleBaseHolder shelf;
  private final ShopCatalogue catalogue;

  RuleBaseHealth(RuleBaseHolder shelf, ShopCatalogue catalogue) {
    this.shelf = shelf;
    this.catalogue = catalogue;
  }

  @Override
  public Health health() {
    if (catalogue.get().isEmpty()) {
      return Health.down().withDetail("reason", catalogue.fault()).build();
    }
    List<CardError> faults = shelf.faults();
    return shelf
        .ruleBase()
        .map(base -> serving(base.revision(), base.cards().size(), faults))
        .orElseGet(
            () ->
                withErrors(
                    Health.down().withDetail("reason", "no rule base is in service"), faults));
  }

  /** A refused folder leaves the rule base in service, and its errors are reported. */
  private static Health serving(Revision revision, int cards, List<CardError> faults) {
    return withErrors(
        Health.up().withDetail("revision", revision.id()).withDetail("cards", cards), faults);
  }

  private static Health withErrors(Health.Builder health, List<CardError> faults) {
    return faults.isEmpty()
        ? health.build()
        : health
            .withDetail("cardErrors", faults.size())
            .withDetail("firstCardError", faults.get(0).toString())
            .build();
  }
}
