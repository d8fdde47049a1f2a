package org.standproud.shop;

import java.nio.file.Path;
import java.time.Clock;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Lazy;
import org.standproud.audit.records.Records;

/** Beans of the catalogue, on the database of the records. */
@Configuration(proxyBeanMethods = false)
class CatalogueConfiguration {

  private static final Logger LOG = LoggerFactory.getLogger(CatalogueConfiguration.class);

  /** Read on demand: a store that holds a catalogue does not start from the files. */
  @Bean
  @Lazy
  SeedCatalogue seedCatalogue(CatalogueProperties properties) {
    Path folder = properties.directory();
    SeedCatalogue seeds = SeedCatalogue.read(folder);
    if (seeds.get().isEmpty()) {
      LOG.error("No catalogue in {}: {}", folder, seeds.fault());
    }
    return seeds;
  }

  @Bean
  @DependsOnDatabaseInitialization
  CatalogueStore catalogueStore(DataSource dataSource, Records records) {
    return new CatalogueStore(dataSource, records, Clock.systemUTC());
  }

  @Bean
  ShopCatalogue shopCatalogue(CatalogueStore store, ObjectProvider<SeedCatalogue> seeds) {
    return new ShopCatalogue(store, seeds::getObject);
  }
}
