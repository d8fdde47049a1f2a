package org.standproud.shop;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.standproud.access.AccessMode;
import org.standproud.access.AccessProperties;
import org.standproud.advice.Adviser;
import org.standproud.audit.records.Records;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.DemonstrationSetups;
import org.standproud.rules.gate.ActiveRuleBase;
import org.standproud.rules.gate.Coverage;
import org.standproud.rules.gate.Gate;
import org.standproud.rules.gate.RetiredCards;
import org.standproud.rules.impact.Impact;
import org.standproud.rules.language.QuantityText;
import org.standproud.rules.publishing.Publishing;
import org.standproud.rules.publishing.RevisionStore;
import org.standproud.rules.publishing.RuleBasePublisher;
import org.standproud.setup.catalogue.Catalogue;

/** Beans of the rule base and its publishing. */
@Configuration(proxyBeanMethods = false)
@EnableScheduling
class RuleConfiguration {

  @Bean
  Gate cardGate(CatalogueProperties properties, ShopCatalogue catalogue) {
    DemonstrationSetups setups =
        new DemonstrationSetups(properties.setups(), catalogue.get().orElse(Catalogue.EMPTY));
    return new Gate(
        Vocabulary.all(),
        new QuantityText(),
        setups::evidence,
        Coverage.Demand.REFUSE,
        RetiredCards.listed());
  }

  @Bean
  RuleBasePublisher cardDesk(
      Gate gate,
      RevisionStore store,
      Records records,
      RulesProperties properties,
      AccessProperties access) {
    return new RuleBasePublisher(
        gate,
        store,
        new ActiveRuleBase(),
        publishing(properties.twoPersons(), access.access()),
        new Impact((base, kinds, facts) -> Adviser.verdict(base, kinds, facts).words()),
        new RecordedJobs(records, properties.impact().mostRecords()),
        Clock.systemUTC());
  }

  /** With access control, weakening a stop takes two persons unless a property decides. */
  static Publishing publishing(RulesProperties.@Nullable TwoPersons twoPersons, AccessMode access) {
    if (twoPersons == null) {
      return access == AccessMode.KEYS ? Publishing.TWO_FOR_STOPS : Publishing.ONE_PERSON;
    }
    return switch (twoPersons) {
      case TRUE -> Publishing.TWO_PERSONS;
      case STOPS -> Publishing.TWO_FOR_STOPS;
      case FALSE -> Publishing.ONE_PERSON;
    };
  }

  @Bean
  RuleBaseHolder ruleShelf(RulesProperties properties, RuleBasePublisher desk) {
    return new RuleBaseHolder(properties.directory(), desk);
  }
}
