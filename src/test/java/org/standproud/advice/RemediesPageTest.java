package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standproud.ComputationTest;
import org.standproud.GeneratedPages;

/** The page of remedies says what the service says today. */
@ComputationTest
class RemediesPageTest {

  private static final Path PAGE = Path.of("api-docs", "remedies.md");

  private static String written;

  @BeforeAll
  static void write() throws IOException {
    written = RemediesPage.written();
  }

  @Test
  void thePageOfRemediesShowsWhatIsAdvisedNow() throws IOException {
    if (GeneratedPages.areWritten()) {
      Files.writeString(PAGE, written);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(written);
  }

  @Test
  void everySetUpThatIsStoppedIsShownWithARemedyOrAnotherHold() {
    for (String name : DemoShop.names()) {
      boolean stopped = DemoShop.trials().of(DemoShop.setup(name)).isStopped();
      assertThat(written.contains("## " + name.replaceFirst("\\.json$", ""))).isEqualTo(stopped);
    }
  }
}
