package org.standproud.audit.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.test.context.ConfigDataApplicationContextInitializer;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.standproud.IntegrationTest;
import org.standproud.audit.SampleRecords;

/** The store as the service opens it, from the settings it ships with. */
@IntegrationTest
class AuditWiringTest {

  private @TempDir Path directory;

  @Test
  void withNoSetUpButADirectoryRecordsOutliveTheService() {
    var first = SampleRecords.stopped("J-1", Instant.EPOCH);
    service().run(context -> assertThat(context.getBean(Records.class).append(first)).isNotNull());

    service()
        .run(
            context -> {
              Records records = context.getBean(Records.class);
              assertThat(records.find(first.id()).orElseThrow().record()).isEqualTo(first);
              assertThat(records.verify().whole()).isTrue();
              assertThat(context.getEnvironment().getProperty("server.address"))
                  .isEqualTo("127.0.0.1");
              assertThat(context.getEnvironment().getProperty("spring.datasource.url"))
                  .contains(";WRITE_DELAY=0");
            });
    assertThat(directory.resolve("standproud.mv.db")).exists();
    assertThat(directory.resolve("chain.key")).exists();
    assertThat(directory.resolve("checkpoint.key.pub")).exists();
    assertThat(directory.resolve("checkpoints.ndjson")).exists();
  }

  @Test
  void aKeyGivenAsAPropertyLeavesNoKeyFile() {
    service()
        .withPropertyValues(
            "standproud.audit.chain-key=MDEyMzQ1Njc4OWFiY2RlZjAxMjM0NTY3ODlhYmNkZWY=")
        .run(
            context -> {
              assertThat(context).hasNotFailed();
              assertThat(Files.exists(directory.resolve("chain.key"))).isFalse();
            });
  }

  private ApplicationContextRunner service() {
    return new ApplicationContextRunner()
        .withInitializer(new ConfigDataApplicationContextInitializer())
        .withUserConfiguration(Wiring.class)
        .withPropertyValues("standproud.audit.directory=" + directory);
  }

  @ImportAutoConfiguration({DataSourceAutoConfiguration.class, FlywayAutoConfiguration.class})
  @org.springframework.context.annotation.Import(AuditConfiguration.class)
  static class Wiring {}
}
