package org.standproud;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every class in which much is decided has a test of its name, so that it is found. */
class TestsByNameTest {

  /** Decisions up to which a class may be tested by those of its callers. */
  private static final int FEW = 60;

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
  private static final Pattern TEXT =
      Pattern.compile("\"\"\".*?\"\"\"|\"(\\\\.|[^\"\\\\])*\"", Pattern.DOTALL);

  /** Each is one more way through the class, as cyclomatic complexity counts them. */
  private static final Pattern DECISION =
      Pattern.compile("\\b(if|for|while|case|catch)\\b|&&|\\|\\||\\s\\?\\s");

  @Test
  void aClassOfManyDecisionsHasATestOfItsName() throws IOException {
    Set<String> tests =
        sources("src/test/java").map(TestsByNameTest::name).collect(Collectors.toSet());
    Set<String> without = new TreeSet<>();
    for (Path source : sources("src/main/java").toList()) {
      if (decisions(Files.readString(source)) > FEW && !tests.contains(name(source) + "Test")) {
        without.add(name(source));
      }
    }
    assertThat(without).isEmpty();
  }

  @Test
  void decisionsAreCountedInCodeOnly() {
    assertThat(
            decisions(
                """
                /** if it is, for a while. */
                boolean b = x > 1 && y ? a : c; // case by case
                String s = "if && ||";
                if (b) { return; }
                """))
        .isEqualTo(3);
  }

  private static long decisions(String source) {
    String code = TEXT.matcher(COMMENT.matcher(source).replaceAll("")).replaceAll("\"\"");
    return DECISION.matcher(code).results().count();
  }

  private static Stream<Path> sources(String folder) throws IOException {
    return Files.walk(Path.of(folder)).filter(path -> path.toString().endsWith(".java"));
  }

  private static String name(Path source) {
    return source.getFileName().toString().replace(".java", "");
  }
}
