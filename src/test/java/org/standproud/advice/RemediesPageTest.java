package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.standproud.GeneratedPages;
import org.standproud.IntegrationTest;

/** The page of remedies says what the service says today. */
@IntegrationTest
class RemediesPageTest {

  private static final Path PAGE = Path.of("api-docs", "remedies.md");

  @Test
  void thePageOfRemediesShowsWhatIsAdvisedNow() throws IOException {
    String written = RemediesPage.written();
    if (GeneratedPages.areWritten()) {
      Files.writeString(PAGE, written);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(written);
  }

  @Test
  void everySetUpThatIsStoppedIsShownWithARemedyOrAnotherHold() throws IOException {
    String page = RemediesPage.written();
    for (String name : DemoShop.names()) {
      boolean stopped = DemoShop.trials().of(DemoShop.setup(name)).isStopped();
      assertThat(page.contains("## " + name.replaceFirst("\\.json$", ""))).isEqualTo(stopped);
    }
  }
}
