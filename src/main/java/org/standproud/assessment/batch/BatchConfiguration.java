package org.standproud.assessment.batch;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.ApiProperties;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.assessment.idempotency.IdempotentAssessor;

/** Beans for batches. */
@Configuration(proxyBeanMethods = false)
class BatchConfiguration {

  @Bean
  Batch batch(IdempotentAssessor assessor, RefusalRenderer problems, ApiProperties properties) {
    return new Batch(assessor, problems, properties.mostLines(), properties.mostBatches());
  }
}
