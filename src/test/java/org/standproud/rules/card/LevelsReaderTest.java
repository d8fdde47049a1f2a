package org.standproud.rules.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelsReaderTest {

  private static final String TEXT = "stop: 5 %\ncaution: 25 %\nnote: 50 %\nsource: our choice\n";

  /** EN 1990, 4.2: the characteristic value of a resistance is its 5 % fractile, from memory. */
  @Test
  void aStopOfTheShopSpeaksAtTheCharacteristicValue() throws Exception {
    String text = Files.readString(Path.of("rules", Levels.FILE));
    Levels levels = Objects.requireNonNull(LevelsReader.read(Levels.FILE, text).levels());
    assertThat(levels.of(Severity.STOP)).isEqualTo(0.05);
    assertThat(levels.of(Severity.CAUTION)).isEqualTo(0.25);
    assertThat(levels.of(Severity.NOTE)).isEqualTo(0.5);
    assertThat(levels.source()).contains("EN 1990", "ISO 2394");
  }

  @Test
  void aLevelMayHaveDecimals() {
    Levels levels =
        Objects.requireNonNull(
            LevelsReader.read(Levels.FILE, TEXT.replace("5 %\nc", "2.5%\nc")).levels());
    assertThat(levels.of(Severity.STOP)).isEqualTo(0.025);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stop: 5 % | stop: 5 | levels.yaml:1:7: \"5\": stop is a percentage from 0 to 99, such as"
            + " 10 %; for example: stop: 5 %",
        "stop: 5 % | stop: 100 % | stop is a percentage",
        "stop: 5 % | stop: -5 % | stop is a percentage",
        "stop: 5 % | stops: 5 % | did you mean \"stop\"",
        "stop: 5 % | stops: 5 % | stop is missing",
        "source: our choice | '' | source is missing",
        "stop: 5 % | stop: 30 % | the level of a stop is above that of a caution",
        "stop: 5 % | stop: [5 %] | stop is a text",
      })
  void whatIsWrongIsNamedWithItsPlace(String from, String to, String error) {
    LevelsReader.Outcome outcome =
        LevelsReader.read(Levels.FILE, TEXT.replace(from, to == null ? "" : to));
    assertThat(outcome.levels()).isNull();
    assertThat(outcome.errors()).extracting(CardError::toString).anyMatch(e -> e.contains(error));
  }
}
