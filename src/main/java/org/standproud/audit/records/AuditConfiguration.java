package org.standproud.audit.records;

import java.nio.file.Path;
import java.time.Clock;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.CheckpointFile;
import org.standproud.audit.chain.KeyPlaces;
import org.standproud.audit.chain.SigningKey;

/** Opens the store on the service's database, with keys and checkpoints beside it. */
@Configuration(proxyBeanMethods = false)
class AuditConfiguration {

  /**
   * Several services on one database share their keys, so they can be given as properties; a single
   * service makes its own.
   */
  @Bean
  ChainKeys seal(
      @Value("${standproud.audit.directory}") Path directory,
      @Value("${standproud.audit.chain-key:}") String chainKey,
      @Value("${standproud.audit.signing-key:}") String signingKey) {
    return new ChainKeys(
        chainKey.isBlank() ? new KeyPlaces(directory).chain().open() : ChainKey.of(chainKey),
        signingKey.isBlank()
            ? new KeyPlaces(directory).signing().open()
            : SigningKey.of(signingKey));
  }

  @Bean
  @DependsOnDatabaseInitialization
  Records records(
      DataSource dataSource,
      ChainKeys seal,
      @Value("${standproud.audit.checkpoints}") Path checkpoints,
      ObjectProvider<AppendListener> following,
      ObjectProvider<EvidenceDigest> inShort) {
    return new Records(
        dataSource,
        seal,
        new CheckpointFile(checkpoints),
        Clock.systemUTC(),
        following.getIfAvailable(() -> AppendListener.NOTHING),
        inShort.getIfAvailable(() -> EvidenceDigest.NOTHING));
  }

  @Bean
  RevisionLog revisionLog(DataSource dataSource, Records records) {
    return new RevisionLog(dataSource, records.ruleBases());
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
