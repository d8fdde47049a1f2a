package org.standproud;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.actuate.autoconfigure.endpoint.jackson.Jackson2EndpointAutoConfiguration;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.autoconfigure.aop.AopAutoConfiguration;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;
import org.springframework.boot.opentelemetry.autoconfigure.logging.OpenTelemetryLoggingAutoConfiguration;
import org.springframework.boot.opentelemetry.autoconfigure.logging.otlp.OtlpLoggingAutoConfiguration;
import org.springframework.boot.persistence.autoconfigure.PersistenceExceptionTranslationAutoConfiguration;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.annotation.Import;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.standproud.command.records.AuditCommand;
import org.standproud.command.rules.RulesCommand;

/** Starts the service, or runs a command where the first argument names one. */
@SpringBootApplication(
    scanBasePackages = {
      "org.standproud.audit",
      "org.standproud.assessment",
      "org.standproud.shop",
      "org.standproud.access",
      "org.standproud.events",
      "org.standproud.settings",
      "org.standproud.api",
      "org.standproud.web"
    },
    // Each costs time and memory at every start. Nothing is woven around beans: transactions are
    // begun where they are needed.
    exclude = {
      AopAutoConfiguration.class,
      Jackson2EndpointAutoConfiguration.class,
      OpenTelemetryLoggingAutoConfiguration.class,
      OtlpLoggingAutoConfiguration.class,
      PersistenceExceptionTranslationAutoConfiguration.class,
      TransactionAutoConfiguration.class
    })
@ConfigurationPropertiesScan
@Import(ServiceConfiguration.class)
@EnableScheduling
@SuppressWarnings("removal") // Jackson 2 on the endpoints is left out before the framework does
public class Standproud {

  /**
   * Runs the service until it is stopped, or one command on the cards or on the records.
   *
   * @param args Spring Boot command-line properties; or {@code rules} or {@code audit} and the
   *     arguments of that command
   */
  public static void main(String[] args) {
    // H2 would cache the last thousand texts read, and ours are whole records of 220 kB.
    System.setProperty("h2.objectCache", "false");
    List<String> given = Arrays.asList(args);
    String first = given.isEmpty() ? "" : given.get(0);
    switch (first) {
      case "rules" -> System.exit(rules(given.subList(1, given.size())));
      case "audit" -> System.exit(audit(given.subList(1, given.size())));
      default -> SpringApplication.run(Standproud.class, args);
    }
  }

  private static int rules(List<String> arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    return RulesCommand.run(out, err, arguments.toArray(String[]::new));
  }

  private static int audit(List<String> arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    return AuditCommand.run(Standproud.class, arguments, out);
  }
}
