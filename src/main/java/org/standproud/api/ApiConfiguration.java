package org.standproud.api;

import java.nio.file.Path;
import java.time.Clock;
import javax.sql.DataSource;
import org.apache.catalina.core.StandardHost;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.info.BuildProperties;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Lazy;
import org.springframework.web.filter.ShallowEtagHeaderFilter;
import org.standproud.api.problem.ProblemValve;
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
import org.standproud.shop.CatalogueStore;
import org.standproud.shop.RuleBaseHolder;
import org.standproud.shop.SeedCatalogue;
import org.standproud.shop.ShopCatalogue;
import tools.jackson.databind.JacksonModule;

/** Puts the service together. */
@Configuration(proxyBeanMethods = false)
class ApiConfiguration {

  private static final Logger LOG = LoggerFactory.getLogger(ApiConfiguration.class);

  /** Read when it is asked for: a store that holds a catalogue does not begin with the files. */
  @Bean
  @Lazy
  SeedCatalogue seedCatalogue(@Value("${standproud.catalogue.directory}") Path folder) {
    SeedCatalogue seeds = SeedCatalogue.read(folder);
    if (seeds.get().isEmpty()) {
      LOG.error("No catalogue in {}: {}", folder, seeds.fault());
    }
    return seeds;
  }

  @Bean
  @DependsOnDatabaseInitialization
  CatalogueStore catalogueStore(DataSource dataSource) {
    return new CatalogueStore(dataSource, Clock.systemUTC());
  }

  @Bean
  ShopCatalogue shopCatalogue(CatalogueStore store, ObjectProvider<SeedCatalogue> seeds) {
    return new ShopCatalogue(store, seeds::getObject);
  }

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
            new AssessmentPipeline(EvidenceGathering::of),
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

  @Bean
  FilterRegistrationBean<ShallowEtagHeaderFilter> catalogueTags() {
    FilterRegistrationBean<ShallowEtagHeaderFilter> tags =
        new FilterRegistrationBean<>(new ShallowEtagHeaderFilter());
    tags.addUrlPatterns(AnswerHeaders.CATALOGUE, AnswerHeaders.CATALOGUE + "/*");
    return tags;
  }

  /** Names on the shelf hold slashes, which clients send as %2F; every refusal is a problem. */
  @Bean
  WebServerFactoryCustomizer<TomcatServletWebServerFactory> server() {
    return server -> {
      server.addConnectorCustomizers(
          connector -> connector.setEncodedSolidusHandling("passthrough"));
      server.addContextCustomizers(
          context ->
              ((StandardHost) context.getParent())
                  .setErrorReportValveClass(ProblemValve.class.getName()));
    };
  }
}
