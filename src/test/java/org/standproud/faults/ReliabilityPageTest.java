package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standproud.GeneratedPages;
import org.standproud.IntegrationTest;

/**
 * api-docs/reliability.md shows the figures of the trials as they were found. {@code
 * -Dreliability.page=write} puts them in after a trial was run anew.
 */
@IntegrationTest
class ReliabilityPageTest {

  private static final Path PAGE = Path.of("api-docs/reliability.md");
  private static final Pattern PLACE =
      Pattern.compile("<!-- figures of ([a-z-]+) -->\n.*?<!-- end -->", Pattern.DOTALL);

  @Test
  void thePageShowsTheFiguresThatTheTrialsFound() throws IOException {
    String page = Files.readString(PAGE);
    String right = PLACE.matcher(page).replaceAll(ReliabilityPageTest::table);
    if (GeneratedPages.areWritten()) {
      Files.writeString(PAGE, right);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(right);
    for (String trial : Trials.names()) {
      assertThat(page).as("a place for each trial").contains("<!-- figures of " + trial + " -->");
    }
  }

  private static String table(MatchResult place) {
    String trial = place.group(1);
    if (Files.notExists(Figures.KEPT.resolve(trial + ".properties"))) {
      return Matcher.quoteReplacement(
          "<!-- figures of %s -->\nNot run yet.\n<!-- end -->".formatted(trial));
    }
    try {
      String rows =
          Files.readAllLines(Figures.KEPT.resolve(trial + ".properties")).stream()
              .map(line -> "| " + line.replace("-", " ").replaceFirst("=", " | ") + " |")
              .collect(Collectors.joining("\n"));
      return Matcher.quoteReplacement(
          "<!-- figures of %s -->\n| | |\n|---|---|\n%s\n<!-- end -->".formatted(trial, rows));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
