package org.standproud.audit.store;

import java.nio.file.Path;
import java.time.Clock;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.audit.chain.ChainKey;
import org.standproud.audit.chain.ChainKeyFile;
import org.standproud.audit.chain.CheckpointFile;

/** Opens the store on the service's database, with key and checkpoints beside it. */
@Configuration(proxyBeanMethods = false)
class AuditConfiguration {

  /**
   * Several services on one database share one key, so it can be given as a property; a single
   * service makes its own.
   */
  @Bean
  ChainKey chainKey(
      @Value("${standproud.audit.directory}") Path directory,
      @Value("${standproud.audit.chain-key:}") String given) {
    return given.isBlank()
        ? new ChainKeyFile(directory.resolve("chain.key")).open()
        : ChainKey.of(given);
  }

  @Bean
  @DependsOnDatabaseInitialization
  Records records(
      DataSource dataSource,
      ChainKey chainKey,
      @Value("${standproud.audit.directory}") Path directory) {
    CheckpointFile outside = new CheckpointFile(directory.resolve("checkpoints.ndjson"));
    return new Records(dataSource, chainKey, outside, Clock.systemUTC());
  }
}
