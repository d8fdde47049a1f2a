package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** What the start creates, and what is created on demand. */
@IntegrationTest
class StartTest {

  @TempDir Path directory;

  @Test
  void theFilesOfTheCatalogueAreReadOnlyWhereTheStoreIsEmpty() {
    try (RunningService first = RunningService.start(directory, Path.of("rules"))) {
      assertThat(first.made("seedCatalogue")).isTrue();
    }
    try (RunningService second = RunningService.start(directory, Path.of("rules"))) {
      assertThat(second.made("seedCatalogue")).isFalse();
      assertThat(second.get("/v1/catalogue/vises").statusCode()).isEqualTo(200);
      assertThat(second.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
    }
  }
}
