package org.standproud.audit.records;

import java.time.Clock;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.chain.SigningKey;

/** Opens the records in the service's database, with keys and checkpoints beside it. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(AuditProperties.class)
class AuditConfiguration {

  /**
   * Replicas on one database share their keys, so they can be given as properties; a single service
   * creates its own.
   */
  @Bean
  ChainKeys seal(AuditProperties properties) {
    KeyPlaces places = new KeyPlaces(properties.directory());
    String chainKey = properties.chainKey();
    String signingKey = properties.signingKey();
    return new ChainKeys(
        chainKey == null || chainKey.isBlank() ? places.chain().open() : ChainKey.of(chainKey),
        signingKey == null || signingKey.isBlank()
            ? places.signing().open()
            : SigningKey.of(signingKey));
  }

  @Bean
  @DependsOnDatabaseInitialization
  Records records(
      DataSource dataSource,
      ChainKeys seal,
      AuditProperties properties,
      ObjectProvider<AppendListener> listener,
      ObjectProvider<EvidenceDigest> digest) {
    return new Records(
        dataSource,
        seal,
        new CheckpointFile(properties.checkpoints()),
        Clock.systemUTC(),
        listener.getIfAvailable(() -> AppendListener.NOTHING),
        digest.getIfAvailable(() -> EvidenceDigest.NOTHING));
  }

  @Bean
  RevisionLog revisionLog(DataSource dataSource, Records records) {
    return new RevisionLog(dataSource, records);
  }

  @Bean
  AcceptanceBook acceptanceBook(Records records) {
    return new AcceptanceBook(records);
  }

  @Bean
  Retention retention(Records records) {
    return new Retention(records, Clock.systemUTC());
  }
}
