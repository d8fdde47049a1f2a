package org.standproud.api.idempotency;

import java.time.Clock;
import java.time.Duration;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.api.assessing.Assessor;
import org.standproud.audit.store.Records;

/** Puts the keys beside the records. */
@Configuration(proxyBeanMethods = false)
class IdempotencyConfiguration {

  @Bean
  @DependsOnDatabaseInitialization
  KeptKeys keptKeys(DataSource dataSource, @Value("${standproud.idempotency.kept}") Duration kept) {
    return new KeptKeys(dataSource, kept, Clock.systemUTC());
  }

  @Bean
  OnceOnly onceOnly(Assessor assessor, Records records, KeptKeys keys) {
    return new OnceOnly(assessor, records, keys);
  }
}
