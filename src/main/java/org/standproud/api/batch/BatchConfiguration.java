package org.standproud.api.batch;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.standproud.api.idempotency.OnceOnly;
import org.standproud.api.problem.ProblemTelling;

/** Makes the batch ready. */
@Configuration(proxyBeanMethods = false)
class BatchConfiguration {

  @Bean
  Batch batch(
      OnceOnly assessor,
      ProblemTelling problems,
      @Value("${standproud.api.most-lines}") long mostLines,
      @Value("${standproud.api.most-batches}") int mostBatches) {
    return new Batch(assessor, problems, mostLines, mostBatches);
  }
}
