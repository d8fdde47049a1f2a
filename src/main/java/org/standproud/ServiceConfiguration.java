package org.standproud;

import java.time.Clock;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.AssessmentMetrics;
import org.standproud.assessment.AssessmentPipeline;
import org.standproud.assessment.Assessor;
import org.standproud.assessment.CurrentEngine;
import org.standproud.assessment.NotReadyException;
import org.standproud.assessment.RecordDetails;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.records.AcceptanceBook;
import org.standproud.audit.records.Records;
import org.standproud.audit.replay.NotReplayable;
import org.standproud.audit.replay.Replayer;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
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

  @Bean
  RecordDetails recordDetails(
      RuleBaseHolder holder, Replayer replayer, ObjectProvider<BuildProperties> build) {
    return new RecordDetails(
        new AssessmentPipeline(EvidenceGathering::jointly),
        revision ->
            holder
                .ruleBase()
                .filter(base -> base.revision().id().equals(revision))
                .or(() -> rebuilt(replayer, revision)),
        version(build));
  }

  private static Optional<RuleBase> rebuilt(Replayer replayer, String revision) {
    try {
      return Optional.of(replayer.rules(revision));
    } catch (NotReplayable e) {
      return Optional.empty();
    }
  }

  private static String version(ObjectProvider<BuildProperties> build) {
    return build.stream().map(BuildProperties::getVersion).findFirst().orElse("unpackaged");
  }

  @Bean
  JacksonModule words() {
    return PlainJson.words();
  }
}
