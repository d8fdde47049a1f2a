package org.standproud;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.autoconfigure.AutoConfigurationImportFilter;
import org.springframework.boot.autoconfigure.AutoConfigurationMetadata;
import org.springframework.context.EnvironmentAware;
import org.springframework.core.env.Environment;
import org.springframework.core.env.StandardEnvironment;

/**
 * Excludes auto-configuration that Spring Boot would start only because a library is on the class
 * path: features that are not used, and the message broker if streaming is off. Each costs
 * processor time and memory at every start.
 */
final class UnusedAutoConfigurationFilter
    implements AutoConfigurationImportFilter, EnvironmentAware {

  private static final String BOOT = "org.springframework.boot.";

  /** No proxies around beans: transactions are begun where they are needed. */
  private static final Set<String> NEVER =
      Set.of(
          BOOT + "actuate.autoconfigure.endpoint.jackson.Jackson2EndpointAutoConfiguration",
          BOOT + "autoconfigure.aop.AopAutoConfiguration",
          BOOT + "opentelemetry.autoconfigure.logging.OpenTelemetryLoggingAutoConfiguration",
          BOOT + "opentelemetry.autoconfigure.logging.otlp.OtlpLoggingAutoConfiguration",
          BOOT + "persistence.autoconfigure.PersistenceExceptionTranslationAutoConfiguration",
          BOOT + "transaction.autoconfigure.TransactionAutoConfiguration",
          BOOT + "validation.autoconfigure.ValidationAutoConfiguration");

  private static final String BROKER = BOOT + "kafka.";

  private Environment environment = new StandardEnvironment();

  @Override
  public void setEnvironment(Environment environment) {
    this.environment = environment;
  }

  @Override
  public boolean[] match(@Nullable String[] names, AutoConfigurationMetadata metadata) {
    boolean broker = environment.getProperty("standproud.stream.enabled", Boolean.class, false);
    boolean[] match = new boolean[names.length];
    for (int i = 0; i < names.length; i++) {
      String name = names[i];
      match[i] = name == null || !NEVER.contains(name) && (broker || !name.startsWith(BROKER));
    }
    return match;
  }
}
