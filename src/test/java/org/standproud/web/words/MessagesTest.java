package org.standproud.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;

/** The catalogue of messages: nothing missing, nothing left over, in the words of a shop. */
class MessagesTest {

  private static final Pattern IN_TEMPLATES =
      Pattern.compile("(?:#\\{|#messages\\.msg\\()'?([a-z][a-zA-Z0-9.-]+)'?(?=[}(),])");
  private static final Pattern IN_CODE =
      Pattern.compile("(?:words\\.(?:of|apply)\\(\\s*|page\\(\"[a-z]+\", )\"([a-z][a-zA-Z.]+)\"");

  /** Keys that are put together from what they are about. */
  private static final List<String> COMPOSED =
      List.of(
          "field.",
          "choice.",
          "item.",
          "handle.",
          "form.step.",
          "form.more.",
          "draft.provisional.",
          "setup.units.",
          "sketch.",
          "job.field.",
          "job.section.");

  private static Properties messages() throws IOException {
    Properties messages = new Properties();
    try (Reader reader =
        Files.newBufferedReader(
            Path.of("src/main/resources/messages.properties"), StandardCharsets.UTF_8)) {
      messages.load(reader);
    }
    return messages;
  }

  private static Set<String> used() throws IOException {
    Set<String> used = new TreeSet<>();
    collect(Path.of("src/main/resources/templates"), ".html", IN_TEMPLATES, used);
    collect(Path.of("src/main/java/org/standproud/web"), ".java", IN_CODE, used);
    used.removeIf(key -> key.endsWith(".") || COMPOSED.contains(key + "."));
    return used;
  }

  private static void collect(Path folder, String ending, Pattern pattern, Set<String> into)
      throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(ending)).toList()) {
        Matcher keys = pattern.matcher(Files.readString(file));
        while (keys.find()) {
          into.add(keys.group(1));
        }
      }
    }
  }

  @Test
  void everyMessageThatAPageAsksForIsThereAndNoneIsLeftOver() throws Exception {
    Set<String> there = messages().stringPropertyNames();
    assertThat(used()).isNotEmpty().isSubsetOf(there);
    Set<String> plain =
        there.stream()
            .filter(key -> COMPOSED.stream().noneMatch(key::startsWith))
            .collect(Collectors.toSet());
    assertThat(plain).isSubsetOf(used());
  }

  @Test
  void noMessageIsWrittenTwice() throws Exception {
    List<String> keys =
        Files.readAllLines(Path.of("src/main/resources/messages.properties")).stream()
            .filter(line -> line.matches("[a-z][^=]*=.*"))
            .map(line -> line.substring(0, line.indexOf('=')))
            .toList();
    assertThat(keys).doesNotHaveDuplicates();
  }

  @Test
  void everyWordOfAFieldBelongsToAFieldThatThereIs() throws Exception {
    Set<String> fields =
        FieldGuide.entries(UnitSystem.METRIC).stream()
            .map(entry -> PageWords.dotted(entry.path()))
            .collect(Collectors.toSet());
    for (String key : messages().stringPropertyNames()) {
      if (key.startsWith("field.")) {
        assertThat(fields).contains(key.substring("field".length()).replaceAll("\\.hint$", ""));
      }
    }
  }

  /** Everything that is asked first has a label of its own. */
  @Test
  void whatIsAskedFirstIsAskedInTheWordsOfAShop() throws Exception {
    Properties messages = messages();
    for (FieldGuide.Step step : FieldGuide.Step.values()) {
      for (String path : FieldGuide.first(step)) {
        assertThat(messages.getProperty("field" + PageWords.dotted(path))).as(path).isNotBlank();
      }
    }
  }

  @Test
  void aSingleQuoteWouldBeSwallowedWhereSomethingIsPutIn() throws Exception {
    Properties messages = messages();
    for (String key : messages.stringPropertyNames()) {
      if (messages.getProperty(key).contains("{0")) {
        assertThat(messages.getProperty(key)).as(key).doesNotContain("'");
      }
    }
  }
}
