package org.standproud.rules.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A card is read up to its limits and refused beyond them, each fault at its place. */
class CardReaderTest {

  private static final String CARD =
      """
      id: HOLD-100
      title: A tall plate rocks
      severity: stop
      confidence: low
      source: {kind: common practice}
      since: 2026-11-25
      owner: shop engineer
      appliesTo: {operation: top edge}
      limits: {deep: 12 mm}
      when: [grip depth < deep]
      message: Grip less
      remedy: grip deeper
      why: The cut pushes.
      examples:
        - {says: shallow, expect: fail, given: {grip depth: 10 mm}}
        - {says: deeper, expect: pass, given: {grip depth: 20 mm}}
      """;

  private static List<String> errors(String card) {
    return CardReader.read("holding/card.yaml", card).errors().stream()
        .map(e -> e.line() + ":" + e.column() + " " + e.message())
        .toList();
  }

  private static String with(String before, String after) {
    assertThat(CARD).contains(before);
    return CARD.replace(before, after);
  }

  private static String many(int n, String each) {
    return IntStream.range(0, n).mapToObj(each::formatted).collect(Collectors.joining(", "));
  }

  @Test
  void aWholeCardHasNoErrors() {
    assertThat(errors(CARD)).isEmpty();
    assertThat(CardReader.read("holding/card.yaml", with("since: 2026-11-25", "since: 2026-02-28")))
        .extracting(o -> o.card() == null ? "" : o.card().since())
        .isEqualTo("2026-02-28");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "appliesTo: {operation: top edge} | appliesTo: [top edge] | "
            + "8:13 appliesTo names facts with their words",
        "appliesTo: {operation: top edge} | appliesTo: [{stage: rough}, {stage: finish}] | "
            + "8:37 stage is written twice",
        "{operation: top edge} | {operation: []} | 8:24 a text or a list of texts is expected here",
        "{operation: top edge} | {operation: [{a: b}, c]} | 8:25 a text is expected here",
        "when: [grip depth < deep] | when: [[a], b] | 10:8 a text is expected here",
        "'when: [grip depth < deep]' | wann: x | 1:1 when is missing",
        "limits: {deep: 12 mm} | limits: 12 mm | 9:9 limits is a map",
        "source: {kind: common practice} | note: x | 1:1 source is missing",
        "source: {kind: common practice} | source: shop | 5:9 source is a map",
        "source: {kind: common practice} | source: {kind: shop} | 5:9 reference is missing",
        "message: Grip less | eases: note | 11:8 eases is a map",
        "message: Grip less | eases: {card: A, to: note} | 11:8 because is missing",
        "message: Grip less | eases: {card: A, to: note, because: c, x: y} | 11:40 not a part of"
            + " a card here; the parts are: card, to, because",
        "message: Grip less | derives: a\\neases: {card: A, to: note, because: c} | 1:1 a card"
            + " either derives a judgement or changes a finding",
        "message: Grip less | overrides: {card: A, to: note, because: c}\\neases: {card: A, to:"
            + " note, because: c} | 1:1 a card eases or overrides, not both",
        "{says: shallow, expect: fail, given: {grip depth: 10 mm}} | shallow | 15:5 an example is"
            + " a map with says, expect and given",
        "given: {grip depth: 10 mm} | give: {grip depth: 10 mm} | 15:5 given is missing",
        "given: {grip depth: 10 mm} | base: b, geben: c | 15:44 not a part of a card here; the"
            + " parts are: says, expect, base, given",
        "says: shallow | says: '' | 15:13 says is empty",
      })
  void eachFaultIsReportedAtItsPlace(String before, String after, String error) {
    assertThat(errors(with(before, after.replace("\\n", "\n")))).contains(error);
  }

  @Test
  void aBaseStandsForWhatIsGiven() {
    assertThat(errors(with("given: {grip depth: 10 mm}", "base: somewhere"))).isEmpty();
  }

  @Test
  void examplesAreAList() {
    String none = CARD.substring(0, CARD.indexOf("examples:"));
    assertThat(errors(none))
        .containsExactly("1:1 examples is a list, at least one fail and one pass");
    assertThat(errors(none + "examples: {a: b}\n"))
        .containsExactly("14:11 examples is a list, at least one fail and one pass");
  }

  @Test
  void aCardMayHaveAsManyPartsAsTheLimitsSayAndNoMore() {
    assertThat(errors(limits(CardLimits.MAX_LIMITS))).isEmpty();
    assertThat(errors(limits(CardLimits.MAX_LIMITS + 1)))
        .containsExactly("9:9 more than 16 limits");
    assertThat(errors(conditions(CardLimits.MAX_CONDITIONS))).isEmpty();
    assertThat(errors(conditions(CardLimits.MAX_CONDITIONS + 1)))
        .containsExactly("10:7 more than 12 conditions");
    assertThat(errors(examples(CardLimits.MAX_EXAMPLES))).isEmpty();
    assertThat(errors(examples(CardLimits.MAX_EXAMPLES + 1)))
        .containsExactly("15:3 more than 30 examples");
  }

  private static String limits(int n) {
    return with("{deep: 12 mm}", "{" + many(n, "l%d: 1") + "}");
  }

  private static String conditions(int n) {
    return with("[grip depth < deep]", "[" + many(n, "c%d") + "]");
  }

  private static String examples(int n) {
    return CARD
        + Collections.nCopies(n - 2, "  - {says: more, expect: open, base: b}\n").stream()
            .collect(Collectors.joining());
  }

  @Test
  void namesAndTextsMayBeAsLongAsTheLimitsSayAndNoLonger() {
    String name = "n".repeat(CardLimits.MAX_NAME_LENGTH);
    assertThat(errors(with("HOLD-100", name))).isEmpty();
    assertThat(errors(with("HOLD-100", name + "n")))
        .containsExactly("1:5 id is longer than 60 characters");
    assertThat(errors(with("{deep:", "{" + name + ":"))).isEmpty();
    assertThat(errors(with("{deep:", "{" + name + "n:")))
        .singleElement()
        .asString()
        .endsWith("a name is longer than 60 characters");
    String text = "t".repeat(CardLimits.MAX_TEXT_LENGTH);
    assertThat(errors(with("The cut pushes.", text))).isEmpty();
    assertThat(errors(with("The cut pushes.", text + "t")))
        .containsExactly("13:6 a text is longer than 2000 characters");
  }

  @Test
  void aCardMayBeAsDeepAndHaveAsManyValuesAsTheLimitsSay() {
    String deepest =
        "[".repeat(CardLimits.MAX_DEPTH - 2) + "x" + "]".repeat(CardLimits.MAX_DEPTH - 2);
    assertThat(errors(with("Grip less", deepest))).containsExactly("11:10 message is a text");
    assertThat(errors(with("Grip less", "[" + deepest + "]")))
        .singleElement()
        .asString()
        .endsWith("nested deeper than 6 levels");
    // A message of that many values beside the other 30 of the card: the error is that it is not a
    // text.
    int room = CardLimits.MAX_VALUES - valuesOf(CARD);
    assertThat(errors(with("Grip less", "[" + many(room, "v") + "]")))
        .containsExactly("11:10 message is a text");
    assertThat(errors(with("Grip less", "[" + many(room + 1, "v") + "]")))
        .singleElement()
        .asString()
        .endsWith("more than 600 values");
  }

  /** Maps, lists and texts: one at every colon, one at every dash, and the card itself. */
  private static int valuesOf(String card) {
    int colons = (int) card.chars().filter(c -> c == ':').count();
    int items = 3; // two examples, one condition
    return colons + items + 1;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | 1:1 a card is a map that begins with id:",
        "just a text | 1:1 a card is a map that begins with id:",
        "[a, b] | 1:1 a card is a map that begins with id:",
        "&a {id: b} | 1:1 anchors and aliases are not allowed",
        "{id: &a b} | 1:6 anchors and aliases are not allowed",
        "{id: !!int 3} | 1:6 tags are not allowed",
        "{id: a, id: b} | 1:9 written twice",
      })
  void whatIsNotACardIsReportedAtItsPlace(String card, String error) {
    assertThat(errors(card)).containsExactly(error);
  }

  @Test
  void aSecondCardInOneFileIsRefused() {
    assertThat(errors("id: a\n---\nid: b\n"))
        .singleElement()
        .asString()
        .endsWith("one file holds one card");
  }

  @Test
  void whatIsNotYamlIsReportedInTheWordsOfItsReader() {
    assertThat(errors("id: [a\n")).singleElement().asString().contains("this is not YAML: ");
    assertThat(errors("id: \"a\n")).singleElement().asString().contains("this is not YAML: found ");
  }
}
