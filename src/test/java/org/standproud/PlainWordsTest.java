package org.standproud;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keeps the idiom of early versions out of code, messages and documents. */
class PlainWordsTest {

  private static final List<Path> SOURCES =
      List.of(
          Path.of("src"),
          Path.of("rules"),
          Path.of("api-docs"),
          Path.of("README.md"),
          Path.of("DEVELOPERS.md"));

  private static final Pattern TEXT = Pattern.compile(".*\\.(java|md|yaml|properties|html|js|css)");

  /** Applied migrations never change, and the words of the facts are with the facts. */
  private static final Pattern EXEMPT =
      Pattern.compile(".*(/db/migration/|/mechanics/evidence/|PlainWordsTest).*");

  private static final String WORDS =
      "told|untold|tells|whoever|nobody|somebody|reckon|reckons|reckoned|reckoning";

  private static final String CAPITALIZED =
      "Told|Untold|Tells|Whoever|Nobody|Somebody|Reckon|Reckons|Reckoned|Reckoning";

  /** In a sentence, or as a part of an identifier in camel case or capitals. */
  private static final Pattern IDIOM =
      Pattern.compile(
          ("\\b(?:words|Capitalized|[Ss]aid of|[Hh]e|[Hh]im|[Hh]imself)\\b"
                  + "|(?<=[a-z0-9])(?:Capitalized)(?![a-z])"
                  + "|(?<![A-Za-z])(?:words)(?=[A-Z])"
                  + "|(?<=_)(?:TOLD|TELLS)\\b|\\b(?:TOLD|TELLS)(?=_)")
              .replace("words", WORDS)
              .replace("Capitalized", CAPITALIZED));

  /**
   * What stays: two facts of the vocabulary, a column of a table, a demonstration set-up, and the
   * usual phrase for telling two things apart.
   */
  private static final Pattern NAMES =
      Pattern.compile(
          "(?:passes|clamps) told|(?:PASSES|CLAMPS)_TOLD"
              + "|\\bi\\.told\\b|[`\"]told[`\"]|, told\\b|set told\\b"
              + "|12-nobody-measured|tells it apart");

  @Test
  void textsUsePlainWords() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path source : SOURCES) {
      try (Stream<Path> files = Files.walk(source)) {
        for (Path file : files.filter(PlainWordsTest::isChecked).sorted().toList()) {
          addIdioms(file, found);
        }
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void idiomsAreFoundInSentencesAndIdentifiers() {
    assertThat(Stream.of("He is told.", "untoldFacts()", "isTold", "KEY_TOLD", "Whoever asks"))
        .allMatch(text -> IDIOM.matcher(text).find());
    assertThat(Stream.of("threshold", "noBody()", "the", "told_by_column", "Can't tell yet"))
        .noneMatch(text -> IDIOM.matcher(text).find());
  }

  private static boolean isChecked(Path file) {
    String path = file.toString().replace('\\', '/');
    return Files.isRegularFile(file)
        && TEXT.matcher(path).matches()
        && !EXEMPT.matcher(path).matches();
  }

  private static void addIdioms(Path file, List<String> found) throws IOException {
    List<String> lines;
    try {
      lines = Files.readAllLines(file);
    } catch (MalformedInputException e) {
      return; // a test resource that is not UTF-8 on purpose
    }
    for (int i = 0; i < lines.size(); i++) {
      Matcher idiom = IDIOM.matcher(NAMES.matcher(lines.get(i)).replaceAll(""));
      if (idiom.find()) {
        found.add(file + ":" + (i + 1) + ": " + idiom.group());
      }
    }
  }
}
