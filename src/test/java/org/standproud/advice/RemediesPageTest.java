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
  void everySetUpIsShownAndEveryStoppedOneWithARemedyOrAnotherHold() {
    for (String name : DemoShop.names()) {
      String head = "## " + name.replaceFirst("\\.json$", "");
      assertThat(written).contains(head);
      String section = written.substring(written.indexOf(head));
      int next = section.indexOf("\n## ");
      section = next < 0 ? section : section.substring(0, next);
      assertThat(section).contains("Why a toolmaker would: ");
      if (DemoShop.trials().of(DemoShop.setup(name)).isStopped()) {
        assertThat(section).contains("### In the vise", "### Held another way");
      }
    }
  }
}
