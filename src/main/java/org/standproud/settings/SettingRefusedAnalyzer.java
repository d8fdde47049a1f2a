package org.standproud.settings;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;

/** Reports a refused property in two sentences instead of a stack trace. */
@Order(Ordered.HIGHEST_PRECEDENCE)
final class SettingRefusedAnalyzer extends AbstractFailureAnalyzer<SettingRefused> {

  private final Environment environment;

  SettingRefusedAnalyzer(Environment environment) {
    this.environment = environment;
  }

  @Override
  protected FailureAnalysis analyze(Throwable root, SettingRefused cause) {
    String given = cause.isRepeatable() ? environment.getProperty(cause.property()) : null;
    return new FailureAnalysis(
        given == null
            ? String.valueOf(cause.getMessage())
            : "The property " + cause.property() + " is refused: its value is \"" + given + "\".",
        cause.allowed() + " All properties are listed in api-docs/configuration.md.",
        cause);
  }
}
