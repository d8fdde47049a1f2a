package org.standproud;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standproud.advice.Verdict;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.Kind;
import tools.jackson.databind.json.JsonMapper;

/** Verdict, kind, severity and truth are enums in code, and words only in JSON. */
class NoComparisonOfWordsTest {

  /** A word in quotes set against a value, or a value set against a word. */
  private static final Pattern COMPARISON =
      Pattern.compile(
          "equals\\(\"(run|run with care|do not run|not judged|stop|caution|fail|open|pass"
              + "|notApplicable|informational|either)\"\\)"
              + "|(verdict|severity|truth)(\\(\\))?\\.(equals|startsWith)\\(\""
              + "|case \"(stop|caution|fail|open|either|do not run|not judged)\"");

  @Test
  void noSourceComparesTheWords() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(sources).hasSizeGreaterThan(500);
      for (Path source : sources) {
        Matcher comparison = COMPARISON.matcher(Files.readString(source));
        assertThat(comparison.find()).as("%s compares words", source).isFalse();
      }
    }
  }

  @Test
  void aComparisonOfWordsIsRecognised() {
    assertThat(
            List.of("kind.equals(\"open\")", "a.severity().equals(\"note\")", "case \"stop\" ->"))
        .allMatch(line -> COMPARISON.matcher(line).find());
  }

  /** SARIF 2.1.0, 3.27.9, names the kinds. */
  @Test
  void aWordOfJsonIsReadAsTheValueItIsWrittenFrom() {
    JsonMapper json = new JsonMapper();
    for (Enum<?> value :
        Stream.of(Verdict.values(), Severity.values(), Kind.values(), Truth.values())
            .<Enum<?>>flatMap(Stream::of)
            .toList()) {
      String word = json.writeValueAsString(value);
      assertThat(json.readValue(word, value.getDeclaringClass())).isEqualTo(value);
      assertThat(word).isEqualTo("\"" + value + "\"").isNotEqualTo("\"" + value.name() + "\"");
    }
    assertThat(json.writeValueAsString(Kind.NOT_APPLICABLE)).isEqualTo("\"notApplicable\"");
    assertThat(json.writeValueAsString(Verdict.DO_NOT_RUN)).isEqualTo("\"do not run\"");
  }
}
