package org.standproud;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.autoconfigure.AutoConfigurationImportFilter;
import org.springframework.boot.autoconfigure.AutoConfigurationMetadata;
import org.springframework.context.EnvironmentAware;
import org.springframework.core.env.Environment;
import org.springframework.core.env.StandardEnvironment;

/**
 * Leaves the Kafka client out of a start where no topic is read: Spring Boot has no property for
 * it. What is never wanted is excluded in {@link Standproud}.
 */
final class KafkaAutoConfigurationFilter
    implements AutoConfigurationImportFilter, EnvironmentAware {

  private static final String KAFKA = "org.springframework.boot.kafka.";

  private Environment environment = new StandardEnvironment();

  @Override
  public void setEnvironment(Environment environment) {
    this.environment = environment;
  }

  @Override
  public boolean[] match(@Nullable String[] names, AutoConfigurationMetadata metadata) {
    boolean stream = environment.getProperty("standproud.stream.enabled", Boolean.class, false);
    boolean[] match = new boolean[names.length];
    for (int i = 0; i < names.length; i++) {
      String name = names[i];
      match[i] = name == null || stream || !name.startsWith(KAFKA);
    }
    return match;
  }
}
