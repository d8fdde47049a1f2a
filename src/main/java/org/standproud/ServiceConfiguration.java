package org.standproud;

import java.time.Clock;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.AssessmentMetrics;
import org.standproud.assessment.AssessmentPipeline;
import org.standproud.assessment.Assessor;
import org.standproud.assessment.CurrentEngine;
import org.standproud.assessment.NotReadyException;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.records.AcceptanceBook;
import org.standproud.audit.records.Records;
import org.standproud.audit.replay.Replayer;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.language.QuantityText;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.ShopCatalogue;
import tools.jackson.databind.JacksonModule;

/** Wires the assessor and the replayer to the catalogue and the cards in service. */
@Configuration(proxyBeanMethods = false)
class ServiceConfiguration {

  @Bean
  Assessor assessor(
      ShopCatalogue catalogue,
      RuleBaseHolder rules,
      Records records,
      AcceptanceBook acceptances,
      ObjectProvider<BuildProperties> build,
      AssessmentMetrics watch) {
    return new Assessor(
        () -> catalogue.get().orElseThrow(() -> new NotReadyException(catalogue.fault())),
        () ->
            rules.ruleBase().orElseThrow(() -> new NotReadyException("no rule base is in service")),
        acceptances::forNew,
        records::append,
        version(build),
        Clock.systemUTC(),
        watch);
  }

  @Bean
  Replayer replayer(
      ShopCatalogue catalogue,
      Records records,
      AcceptanceBook acceptances,
      ObjectProvider<BuildProperties> build) {
    return new Replayer(
        new CurrentEngine(
            version(build),
            new AssessmentPipeline(EvidenceGathering::jointly),
            () -> catalogue.get().orElse(Catalogue.EMPTY)),
        records.ruleBases()::find,
        acceptances::find,
        Vocabulary.all(),
        new QuantityText());
  }

  private static String version(ObjectProvider<BuildProperties> build) {
    return build.stream().map(BuildProperties::getVersion).findFirst().orElse("unpackaged");
  }

  @Bean
  JacksonModule words() {
    return PlainJson.words();
  }
}
