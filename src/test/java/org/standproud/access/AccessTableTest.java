package org.standproud.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standproud.GeneratedPages;

/** The table of access, and the page that shows it. */
class AccessTableTest {

  private static final Path PAGE = Path.of("api-docs/access.md");
  private static final String HEADING = "| call | who | what is there |\n|---|---|---|\n";

  @Test
  void thePageShowsTheTable() throws IOException {
    String table =
        HEADING
            + AccessTable.rows().stream().map(AccessTableTest::line).collect(Collectors.joining());
    String page = Files.readString(PAGE);
    if (GeneratedPages.areWritten()) {
      int start = page.indexOf(HEADING);
      int end = page.indexOf("\n\n", start) + 1;
      page = page.substring(0, start) + table + page.substring(end);
      Files.writeString(PAGE, page);
    }
    assertThat(page).contains(table + "\n");
  }

  @Test
  void noRoleIsWithoutAnythingToDoAndNoRowIsThereTwice() {
    for (Role role : Role.values()) {
      assertThat(AccessTable.rows())
          .as(role.words())
          .anyMatch(row -> row.roles().contains(role) && row.roles().size() == 1);
    }
    assertThat(AccessTable.rows().stream().map(row -> row.methods() + row.pattern()))
        .doesNotHaveDuplicates();
    assertThat(Role.of("rule-editor")).contains(Role.RULE_EDITOR);
    assertThat(Role.of("king")).isEmpty();
  }

  private static String line(AccessTable.Row row) {
    String methods =
        row.methods().isEmpty() ? "any" : row.methods().contains("GET") ? "read" : "change";
    return "| %s `%s` | %s | %s |\n".formatted(methods, row.pattern(), who(row), row.what());
  }

  private static String who(AccessTable.Row row) {
    if (row.open()) {
      return "everybody";
    }
    return row.roles().size() == Role.values().length
        ? "any role"
        : row.roles().stream().sorted().map(Role::words).collect(Collectors.joining(", "));
  }
}
