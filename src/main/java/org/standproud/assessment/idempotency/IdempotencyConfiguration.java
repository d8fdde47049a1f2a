package org.standproud.assessment.idempotency;

import java.time.Clock;
import javax.sql.DataSource;
import org.springframework.boot.sql.init.dependency.DependsOnDatabaseInitialization;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.Assessor;
import org.standproud.audit.records.Records;

/** Stores the keys in the database of the records. */
@Configuration(proxyBeanMethods = false)
class IdempotencyConfiguration {

  @Bean
  @DependsOnDatabaseInitialization
  IdempotencyKeyRepository keptKeys(DataSource dataSource, IdempotencyProperties properties) {
    return new IdempotencyKeyRepository(dataSource, properties.kept(), Clock.systemUTC());
  }

  @Bean
  IdempotentAssessor onceOnly(Assessor assessor, Records records, IdempotencyKeyRepository keys) {
    return new IdempotentAssessor(assessor, records, keys);
  }
}
