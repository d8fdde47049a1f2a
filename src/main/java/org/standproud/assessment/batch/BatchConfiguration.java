package org.standproud.assessment.batch;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.assessment.idempotency.IdempotentAssessor;

/** Makes the batch ready. */
@Configuration(proxyBeanMethods = false)
class BatchConfiguration {

  @Bean
  Batch batch(
      IdempotentAssessor assessor,
      RefusalRenderer problems,
      @Value("${standproud.api.most-lines}") long mostLines,
      @Value("${standproud.api.most-batches}") int mostBatches) {
    return new Batch(assessor, problems, mostLines, mostBatches);
  }
}
