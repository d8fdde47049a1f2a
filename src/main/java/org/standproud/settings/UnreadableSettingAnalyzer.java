package org.standproud.settings;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Period;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.bind.BindException;
import org.springframework.boot.context.properties.source.ConfigurationPropertyName;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.util.unit.DataSize;

/** Reports a property whose text does not fit its type, with the allowed values. */
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
final class UnreadableSettingAnalyzer extends AbstractFailureAnalyzer<BindException> {

  private static final ConfigurationPropertyName OURS = ConfigurationPropertyName.of("standproud");

  private static final Map<Class<?>, String> ALLOWED =
      Map.of(
          boolean.class, "true or false",
          int.class, "a whole number",
          long.class, "a whole number",
          Duration.class, "a duration, such as 10s or PT10S",
          Period.class, "a period, such as P10Y or P90D",
          DataSize.class, "a size, such as 64KB",
          URI.class, "a URI",
          Path.class, "a path");

  private final Environment environment;

  UnreadableSettingAnalyzer(Environment environment) {
    this.environment = environment;
  }

  @Override
  protected @Nullable FailureAnalysis analyze(Throwable root, BindException cause) {
    if (!OURS.isAncestorOf(cause.getName()) || cause.getProperty() == null) {
      return null;
    }
    Class<?> type = cause.getTarget().getType().resolve(Object.class);
    String allowed =
        type.isEnum() ? constants(type) : ALLOWED.getOrDefault(type, "a " + type.getSimpleName());
    SettingRefused refused =
        new SettingRefused(
            cause.getName().toString(),
            cause.getProperty().getValue(),
            "Allowed is " + allowed + ".");
    return new SettingRefusedAnalyzer(environment).analyze(root, refused);
  }

  private static String constants(Class<?> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(constant -> constant.toString().toLowerCase(Locale.ROOT).replace('_', '-'))
        .collect(Collectors.joining(", ", "one of ", ""));
  }
}
