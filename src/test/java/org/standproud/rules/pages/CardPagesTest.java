package org.standproud.rules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.GeneratedPages;
import org.standproud.command.rules.RulesCommand;

class CardPagesTest {

  private static final Path COMMITTED = Path.of("api-docs/rules");

  @TempDir static Path folder;

  private static Map<String, String> pages(Path folder) throws Exception {
    Map<String, String> pages = new TreeMap<>();
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        pages.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return pages;
  }

  @Test
  void thePagesInTheRepositoryAreThoseTheCardsMake() throws Exception {
    Files.writeString(folder.resolve("OLD-001.md"), "a card that is gone");
    PrintWriter out = new PrintWriter(new StringWriter());
    assertThat(RulesCommand.run(out, out, "pages", "--into", folder.toString())).isZero();
    if (GeneratedPages.areWritten()) {
      assertThat(RulesCommand.run(out, out, "pages", "--into", COMMITTED.toString())).isZero();
    }
    Map<String, String> made = pages(folder);
    Map<String, String> committed = pages(COMMITTED);
    assertThat(committed.keySet())
        .as("run: mvn -Pregenerate verify")
        .containsExactlyElementsOf(made.keySet());
    made.forEach((name, page) -> assertThat(committed.get(name)).as(name).isEqualTo(page));
  }

  @Test
  void everyLinkOfAPageLeadsToAPage() throws Exception {
    Map<String, String> committed = pages(COMMITTED);
    Pattern link = Pattern.compile("\\]\\(([^)#]+)(#[^)]*)?\\)");
    committed.forEach(
        (name, page) -> {
          List<String> targets =
              link.matcher(page).results().map(m -> m.group(1)).distinct().toList();
          assertThat(targets)
              .as(name)
              .allMatch(target -> Files.exists(COMMITTED.resolve(target).normalize()));
        });
  }
}
