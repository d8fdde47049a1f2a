package org.standproud.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.standproud.IntegrationTest;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;

/** A service that is started with a property it cannot use says so and ends. */
@IntegrationTest
@ExtendWith(OutputCaptureExtension.class)
class RefusedAtStartTest {

  @TempDir Path directory;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "standproud.acces | keys | the nearest is standproud.access",
        "standproud.access | locked | one of open, keys",
        "standproud.rules.follow-every | often | a duration, such as 10s",
        "standproud.rules.follow-every | 0s | A duration above zero",
        "standproud.rules.two-persons | perhaps | one of true, false, stops",
        "standproud.limits.calls-per-minute | -1 | A whole number from 0",
        "standproud.audit.most-exports | -1 | A whole number from 0",
        "standproud.retention.records | ten years | a period, such as P10Y",
        "standproud.api.largest-body | 3GB | A size from 1B to 2047MB"
      })
  void nameValueAndWhatIsAllowedAreReported(
      String property, String value, String allowed, CapturedOutput output) {
    String setting = "--" + property + "=" + value;
    assertThatThrownBy(() -> RunningService.start(directory, Path.of("rules"), setting).close())
        .isNotNull();
    assertThat(output.getAll())
        .contains("APPLICATION FAILED TO START", property, "\"" + value + "\"", allowed)
        .doesNotContain("\tat org.");
  }

  @Test
  void aVariableOfTheEnvironmentIsCheckedToo() {
    assertThatThrownBy(
            () -> ServiceProcess.start(Map.of("STANDPROUD_ACCES", "keys"), directory).close())
        .hasMessageContaining("STANDPROUD_ACCES");
  }

  @Test
  void aPropertyThatExistsStarts() throws Exception {
    try (ServiceProcess service =
        ServiceProcess.start(
            Map.of("STANDPROUD_RULES_TWO_PERSONS", "true"),
            directory,
            "--standproud.events.inside-hosts=erp.shop.example")) {
      assertThat(service.runs()).isTrue();
    }
  }
}
