package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.CardLimits;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.gate.GateResult.Rejected;

class BadCardTest {

  /** A good card; each fixture breaks one line of it. */
  private static final String GOOD =
      """
      id: HOLD-100
      title: A tall plate rocks
      severity: stop
      confidence: low
      source: {kind: handbook, reference: a handbook, edition: "3, 1990", page: "12"}
      since: 2026-11-25
      owner: shop engineer
      appliesTo: {operation: top edge}
      limits: {deep grip: 12 mm}
      when:
        - grip depth < deep grip
        - stage = "rough"
      message: "Grip {grip depth} is less than {deep grip}"
      remedy: grip deeper
      why: The cut pushes at the top.
      examples:
        - {says: shallow, expect: fail, given: {operation: top edge, grip depth: 10 mm, stage: rough}}
        - {says: deep, expect: pass, given: {operation: top edge, grip depth: 20 mm, stage: rough}}
        - {says: finish, expect: pass, given: {operation: top edge, grip depth: 9 mm, stage: finish}}
        - {says: no grip, expect: open, given: {operation: top edge, grip depth: unknown, stage: rough}}
        - {says: no stage, expect: open, given: {operation: top edge, grip depth: 9 mm, stage: unknown}}
      """;

  private static Arguments bad(int line, String good, String bad, String message) {
    return Arguments.of(line, good, bad, message);
  }

  static Stream<Arguments> badCards() {
    return Stream.of(
        bad(1, "id: HOLD-100", "id: HOLD 100", "an id is letters, digits and hyphens"),
        bad(1, "id: HOLD-100\n", "", "id is missing"),
        bad(1, "id: HOLD-100", "idd: HOLD-100", "did you mean \"id\""),
        bad(2, "title: A tall plate rocks", "title: ''", "title is empty"),
        bad(2, "title: A tall plate rocks", "title: [a, b]", "title is a text"),
        bad(3, "severity: stop", "severity: stopp", "did you mean \"stop\""),
        bad(3, "severity: stop", "severity: fatal", "severity is one of: note, caution, stop"),
        bad(3, "severity: stop", "severitty: stop", "did you mean \"severity\""),
        bad(4, "confidence: low", "confidence: sure", "confidence is one of: high, medium, low"),
        bad(5, "kind: handbook", "kind: rumour", "kind is one of: standard, handbook, paper"),
        bad(5, "reference: a handbook, ", "", "reference is missing"),
        bad(5, "page: \"12\"", "pages: \"12\"", "did you mean \"page\""),
        bad(6, "since: 2026-11-25", "since: yesterday", "since is a day"),
        bad(6, "since: 2026-11-25", "since: 2026-02-30", "since is a day"),
        bad(7, "owner: shop engineer", "owner:", "owner is empty"),
        bad(8, "operation: top edge", "operation: top side", "operation is one of: top edge"),
        bad(8, "operation: top edge}", "operatoin: top edge}", "did you mean \"operation\""),
        bad(8, "{operation: top edge}", "{grip depth: 12 mm}", "a number belongs under when"),
        bad(8, "{operation: top edge}", "top edge", "appliesTo names facts with their words"),
        bad(8, "{operation: top edge}", "{packed: maybe}", "packed is true or false"),
        bad(9, "12 mm", "12 parsecs", "not a quantity"),
        bad(9, "12 mm", "about 12", "not a quantity"),
        bad(
            9,
            "{deep grip: 12 mm}",
            "{deep grip: 12 mm, wide: 3 mm}",
            "no condition uses the limit"),
        bad(
            9,
            "{deep grip: 12 mm}",
            "{deep grip: 12 mm, stick-out: 3 mm}",
            "has the name of a fact"),
        bad(11, "deep grip: 12 mm", "deep grip: 12 N", "a length cannot be compared with a force"),
        bad(11, "grip depth < deep grip", "gripdepth < deep grip", "did you mean \"grip depth\""),
        bad(11, "grip depth < deep grip", "grip depth < deep gripp", "did you mean \"deep grip\""),
        bad(11, "grip depth < deep grip", "grip depth <", "the condition ends too early"),
        bad(
            11,
            "grip depth < deep grip",
            "grip depth < 12 mm",
            "belongs under limits, with a name"),
        bad(
            11,
            "grip depth < deep grip",
            "grip depth < 12",
            "cannot be compared with a pure number"),
        bad(11, "grip depth < deep grip", "grip depth < deep grip && packed", "write and"),
        bad(11, "grip depth < deep grip", "grip depth == deep grip", "write = once"),
        bad(
            11,
            "grip depth < deep grip",
            "grips(grip depth) < deep grip",
            "no fact, limit or judgement"),
        bad(
            11,
            "grip depth < deep grip",
            "sum(grip depth) < deep grip",
            "only not, min, max and abs"),
        bad(12, "stage = \"rough\"", "stage = rough", "a word stands in double quotes"),
        bad(12, "stage = \"rough\"", "stage = \"rouhg\"", "did you mean \"rough\""),
        bad(12, "stage = \"rough\"", "stage = 'rough'", "words stand in double quotes"),
        bad(12, "stage = \"rough\"", "1 = 1", "reads no fact"),
        bad(12, "stage = \"rough\"", "operation = \"broad side\"", "two words at once"),
        bad(13, "{grip depth}", "{gripdepth}", "no fact or limit has this name"),
        bad(13, "{grip depth}", "{grip depth", "a placeholder is not closed"),
        bad(
            13,
            "message: \"Grip {grip depth} is less than {deep grip}\"",
            "message: ''",
            "message is empty"),
        bad(14, "remedy: grip deeper", "remmedy: grip deeper", "did you mean \"remedy\""),
        bad(15, "why: The cut pushes at the top.", "why: {a: b}", "why is a text"),
        bad(17, "expect: fail", "expect: pass", "no example expects fail"),
        bad(
            17,
            "expect: fail",
            "expect: flag",
            "expect is one of: fail, pass, open, notApplicable"),
        bad(
            17,
            "grip depth: 10 mm",
            "grip depth: 30 mm",
            "the example expects fail but the card says pass"),
        bad(17, "grip depth: 10 mm", "grip dept: 10 mm", "did you mean \"grip depth\""),
        bad(17, "grip depth: 10 mm", "grip depth: 10 N", "has the unit m"),
        bad(17, "grip depth: 10 mm", "grip depth: -10 mm", "is between 0.0 and 10.0 m"),
        bad(17, "grip depth: 10 mm", "grip depth: 14 mm to 9 mm", "from high to low"),
        bad(17, "stage: rough}", "stage: semi}", "is one of: rough, finish, unknown"),
        bad(17, "{says: shallow, ", "{says: shallow, base: no such, ", "no demonstration set-up"),
        bad(
            18,
            "given: {operation: top edge, grip depth: 20 mm, stage: rough}",
            "expect: pass",
            "written twice"),
        bad(2, "title: A", "id: HOLD-101\ntitle: A", "written twice"),
        bad(2, "title: A tall plate rocks", "title: &a A tall plate", "anchors and aliases"),
        bad(
            2,
            "title: A tall plate rocks",
            "title: !!javax.script.ScriptEngineManager x",
            "tags are not"),
        bad(7, "owner: shop engineer", "owner: [unclosed", "this is not YAML"),
        bad(7, "owner: shop engineer", "owner:\tshop: engineer", "this is not YAML"),
        bad(
            9,
            "{deep grip: 12 mm}",
            "{deep grip: {a: {b: {c: {d: {e: {f: 1}}}}}}}",
            "nested deeper"),
        bad(20, "stage: finish}}\n", "stage: finish}}\n---\nid: B\n", "one file holds one card"),
        bad(
            1,
            "id: HOLD-100",
            "eases: {card: NONE, to: note, because: x}\nid: HOLD-100",
            "no card with this id"),
        bad(
            1,
            "id: HOLD-100",
            "derives: a\neases: {card: A, to: note, because: x}\nid: HOLD-100",
            "either derives"));
  }

  @ParameterizedTest(name = "{2}: {3}")
  @MethodSource("badCards")
  void aBadCardIsRefusedWithItsLineAndTheReason(int line, String good, String bad, String message) {
    assertThat(GOOD).contains(good);
    List<CardError> errors =
        errors(
            Map.of(
                "holding/tall.yaml",
                GOOD.replaceFirst(
                    java.util.regex.Pattern.quote(good),
                    java.util.regex.Matcher.quoteReplacement(bad))));
    assertThat(errors)
        .as(errors.toString())
        .anySatisfy(
            e -> {
              assertThat(e.toString()).contains(message);
              assertThat(e.file()).isEqualTo("holding/tall.yaml");
              assertThat(e.column()).isPositive();
              assertThat(e.line()).isBetween(Math.max(1, line - 1), line + 1);
            });
  }

  /** What only taking away or another value puts right has no line that would always work. */
  private static final String NO_EXAMPLE =
      "(?s).*(written twice|anchors|tags are|not YAML|nested|one file holds|no condition uses"
          + "|has the name of a fact|two words at once|is longer|no card with this id"
          + "|the example expects|no demonstration).*";

  @ParameterizedTest(name = "{2}: {3}")
  @MethodSource("badCards")
  void whatCanBeWrittenRightIsShownWrittenRight(int line, String good, String bad, String message) {
    Map<String, String> files = Map.of("holding/tall.yaml", GOOD.replace(good, bad));
    assertThat(errors(files))
        .filteredOn(e -> e.toString().contains(message) && !e.message().matches(NO_EXAMPLE))
        .allSatisfy(e -> assertThat(e.example()).as(e.toString()).isNotBlank());
  }

  @Test
  void aUnitNearlyRightIsReportedWithTheRightOne() {
    assertThat(errors(Map.of("holding/a.yaml", GOOD.replace("12 mm", "12 mmm"))).toString())
        .contains("\"mmm\" is not a unit here", "did you mean \"mm\"?");
    assertThat(errors(Map.of("holding/a.yaml", GOOD.replace("20 mm", "20 Mm"))).toString())
        .contains("grip depth", "did you mean \"mm\"?", "for example: grip depth: 100 mm");
  }

  @Test
  void aConditionShownAsAnExampleWorksInThatCard() {
    String broken = GOOD.replace("- grip depth < deep grip", "- gripdepth < deep grip");
    String example = errors(Map.of("holding/a.yaml", broken)).get(0).example();
    String mended = GOOD.replace("- grip depth < deep grip", "- " + example);
    assertThat(CardReader.read("holding/a.yaml", mended).errors()).isEmpty();
    assertThat(
            GateTest.gate(Coverage.Demand.REPORT)
                .draft(Map.of("holding/a.yaml", mended), GateTest.BY)
                .ruleBase())
        .isNotNull();
  }

  private static List<CardError> errors(Map<String, String> files) {
    GateResult result = GateTest.gate(Coverage.Demand.REPORT).check(files, GateTest.BY);
    assertThat(result).isInstanceOf(Rejected.class);
    return ((Rejected) result).errors();
  }

  private static String derives(String id, String judgement, String reads) {
    return """
        id: %s
        title: A judgement
        confidence: low
        source: {kind: shop, reference: this shop}
        since: 2026-11-25
        owner: shop engineer
        derives: %s
        when: %s
        why: It is so.
        examples:
          - {says: yes, expect: fail, given: {packed: true}}
          - {says: no, expect: pass, given: {packed: false}}
        """
        .formatted(id, judgement, reads);
  }

  @Test
  void theUnbrokenCardPasses() {
    assertThat(
            GateTest.gate(Coverage.Demand.REFUSE)
                .check(Map.of("holding/tall.yaml", GOOD), GateTest.BY))
        .isInstanceOf(GateResult.Published.class);
  }

  @Test
  void aFolderThatIsNoneOfOursIsRefused() {
    assertThat(errors(Map.of("holdin/tall.yaml", GOOD)).toString())
        .contains("the folder says what a card protects", "did you mean \"holding\"?");
  }

  @Test
  void twoCardsMayNotHaveOneId() {
    assertThat(errors(Map.of("holding/a.yaml", GOOD, "holding/b.yaml", GOOD)).toString())
        .contains("this id is taken by holding/a.yaml");
  }

  @Test
  void twoCardsMayNotDeriveOneJudgement() {
    Map<String, String> files =
        Map.of(
            "data/a.yaml", derives("A", "soft seat", "packed"),
            "data/b.yaml", derives("B", "soft seat", "packed"));
    assertThat(errors(files).toString()).contains("already derived by A");
  }

  @Test
  void aRingOfJudgementsIsRefused() {
    Map<String, String> files =
        Map.of(
            "data/a.yaml", derives("A", "first", "packed and third"),
            "data/b.yaml", derives("B", "second", "first"),
            "data/c.yaml", derives("C", "third", "second or packed"));
    assertThat(errors(files)).hasSize(3);
    assertThat(errors(files).toString()).contains("this judgement depends on itself");
  }

  @Test
  void aCardThatReadsItsOwnJudgementIsRefused() {
    assertThat(errors(Map.of("data/a.yaml", derives("A", "own", "packed and own"))).toString())
        .contains("this judgement depends on itself");
  }

  @Test
  void twoCardsMayNotEaseEachOther() {
    String one = GOOD.replace("id: HOLD-100", "id: A\neases: {card: B, to: note, because: x}");
    String two = GOOD.replace("id: HOLD-100", "id: B\neases: {card: A, to: note, because: x}");
    assertThat(errors(Map.of("holding/a.yaml", one, "holding/b.yaml", two)).toString())
        .contains("this card has no finding of its own to change");
  }

  @Test
  void anEasingThatDoesNotEaseIsRefused() {
    String easing =
        GOOD.replace("id: HOLD-100", "id: B\neases: {card: HOLD-100, to: stop, because: x}");
    assertThat(errors(Map.of("holding/a.yaml", GOOD, "holding/b.yaml", easing)).toString())
        .contains("eases must lower the severity");
  }

  @Test
  void aConditionNoExampleShowsBothWaysIsRefusedWhereThatIsAsked() {
    String gap = GOOD.replaceFirst("  - \\{says: finish.*\n", "");
    GateResult result =
        GateTest.gate(Coverage.Demand.REFUSE).check(Map.of("holding/tall.yaml", gap), GateTest.BY);
    assertThat(((Rejected) result).errors())
        .singleElement()
        .satisfies(
            e -> {
              assertThat(e.message()).isEqualTo("no example shows this condition not to hold");
              assertThat(e.line()).isEqualTo(12);
            });
    assertThat(
            GateTest.gate(Coverage.Demand.REPORT)
                .check(Map.of("holding/tall.yaml", gap), GateTest.BY))
        .isInstanceOf(GateResult.Published.class);
  }

  @Test
  void aConditionNoExampleShowsOpenIsRefusedWhereThatIsAsked() {
    String gap = GOOD.replaceFirst("  - \\{says: no grip.*\n", "");
    GateResult result =
        GateTest.gate(Coverage.Demand.REFUSE).check(Map.of("holding/tall.yaml", gap), GateTest.BY);
    assertThat(((Rejected) result).errors())
        .singleElement()
        .satisfies(
            e -> {
              assertThat(e.message()).startsWith("no example shows this condition open");
              assertThat(e.line()).isEqualTo(11);
            });
  }

  @Test
  void anExampleTheCardIsNotAboutShowsNothingOfItsConditions() {
    String gap =
        GOOD.replace(
            "says: no grip, expect: open, given: {operation: top edge",
            "says: no grip, expect: notApplicable, given: {operation: broad side");
    GateResult result =
        GateTest.gate(Coverage.Demand.REFUSE).check(Map.of("holding/tall.yaml", gap), GateTest.BY);
    assertThat(((Rejected) result).errors())
        .singleElement()
        .satisfies(e -> assertThat(e.message()).startsWith("no example shows this condition open"));
  }

  @Test
  void noCardsAtAllAreRefused() {
    assertThat(errors(Map.of()).toString()).contains("there are no cards");
  }

  @Test
  void aCardThatIsTooLargeIsRefused() {
    String large = GOOD + "# ".repeat(CardLimits.MAX_CARD_LENGTH);
    assertThat(errors(Map.of("holding/a.yaml", large)).toString()).contains("the card is longer");
    String many =
        GOOD.replace("when:", "revised: [" + "a,".repeat(CardLimits.MAX_VALUES) + "]\nwhen:");
    assertThat(errors(Map.of("holding/a.yaml", many)).toString()).contains("more than 600 values");
    String nested = "a: " + "[".repeat(5000);
    assertThat(errors(Map.of("holding/a.yaml", nested))).hasSize(1);
  }

  private static String laughs(int levels) {
    StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < levels; i++) {
      text.append("a").append(i).append(": &a").append(i).append(" [");
      text.append(("*a" + (i - 1) + ", ").repeat(9)).append("x]\n");
    }
    return text.toString();
  }

  static Stream<String> bombs() {
    return Stream.of(
        laughs(12),
        "a: &a [*a]\n",
        "a: &a {b: *a}\n",
        "<<: *a\nid: X\n",
        "&a id: *a\n",
        "? [a, b]\n: c\n",
        "? {a: b}\n: c\n",
        "id: " + "[".repeat(8000),
        "id: " + "{a: ".repeat(4000),
        "- ".repeat(8000),
        "a:\n".repeat(5000),
        "id: " + "9".repeat(16_000),
        "limits: {a: 1" + "0".repeat(400) + " mm}\n",
        "limits: {a: 1e999 mm}\n",
        "limits: {a: 1e" + "9".repeat(30) + "}\n",
        "limits: {a: .inf, b: .nan, c: 0x7fffffffffffffff, d: 1_000, e: 190:20:30}\n",
        "id: !!python/object/apply:os.system ['id']\n",
        "id: !<tag:yaml.org,2002:java.net.URL> http://x\n",
        "%TAG ! tag:x,2000:\n---\nid: X\n",
        "%YAML 9.9\n---\nid: X\n",
        "id: \"\\ud800\"\n",
        "id: \"\\x00\\u2028\\Uffffffff\"\n",
        "id: |99999999\n x\n",
        "id: >-\n" + " x\n".repeat(4000),
        "\ufeffid: X\n",
        "id: X\n...\nid: Y\n",
        "id: X\n---\nid: Y\n",
        "\u0000",
        "\uffff\ud800",
        "");
  }

  @ParameterizedTest
  @MethodSource("bombs")
  void whatIsMeantToBreakAReaderIsRefusedAtOnce(String yaml) {
    assertThat(errors(Map.of("holding/a.yaml", yaml)))
        .isNotEmpty()
        .hasSizeLessThanOrEqualTo(CardLimits.MAX_ERRORS)
        .allSatisfy(
            e -> {
              assertThat(e.line()).isPositive();
              assertThat(e.toString()).hasSizeLessThan(3_000);
            });
  }

  @ParameterizedTest
  @org.junit.jupiter.params.provider.ValueSource(
      strings = {
        "../holding/a.yaml",
        "/holding/a.yaml",
        "holding/../a.yaml",
        "holding/..yaml",
        "holding/a..yaml",
        "holding\\a.yaml",
        "C:/holding/a.yaml",
        "holding/a.yaml/",
        "holding//a.yaml",
        "./holding/a.yaml",
        "holding/a.yaml\u0000.txt",
        "holding/.a.yaml",
        "holding/a b.yaml",
        "holding/a.yaml\n",
        "holding/a.txt",
        "holding/-a.yaml",
        "a.yaml",
        "",
        "x/y/holding/a.yaml",
      })
  void aNameThatCouldLeadElsewhereIsRefused(String file) {
    assertThat(errors(Map.of(file, GOOD)).toString())
        .contains("a card is named for what it protects");
  }

  @Test
  void aMessageFullOfUnknownNamesIsReportedUpToTheLimitOfErrors() {
    String many = GOOD.replace("Grip {grip depth}", "{nothing}".repeat(50) + "{grip depth}");
    assertThat(errors(Map.of("holding/a.yaml", many))).hasSize(CardLimits.MAX_ERRORS);
  }

  @Test
  void anUnreadableLimitIsReportedOnce() {
    assertThat(errors(Map.of("holding/a.yaml", GOOD.replace("12 mm}", "12 mmm}")))).hasSize(1);
  }

  @Provide
  Arbitrary<String> numbers() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().map(String::valueOf),
        Arbitraries.bigIntegers().map(String::valueOf),
        Arbitraries.of("e", "-", ".", "E9", "0x", "_", "+", "1")
            .list()
            .ofMaxSize(9)
            .map(l -> String.join("", l)));
  }

  @Property(tries = 300)
  void anyNumberForALimitIsReadOrRefusedAndNothingElse(@ForAll("numbers") String number) {
    String yaml = GOOD.replace("deep grip: 12 mm", "deep grip: \"" + number + " mm\"");
    Gate.Draft draft =
        GateTest.gate(Coverage.Demand.REPORT).draft(Map.of("holding/a.yaml", yaml), GateTest.BY);
    assertThat(draft.ruleBase() != null || !draft.errors().isEmpty()).isTrue();
  }

  @Provide
  Arbitrary<String> mangled() {
    return Arbitraries.integers()
        .between(0, GOOD.length() - 1)
        .tuple2()
        .flatMap(
            t ->
                Arbitraries.oneOf(
                        Arbitraries.of(
                            "", ":", "{", "}", "[", "- ", "\n", "&a ", "*a", "\"", "\t", "|", "%",
                            "!!x ", "\u0007"),
                        Arbitraries.strings().ofMaxLength(4))
                    .map(
                        s ->
                            GOOD.substring(0, Math.min(t.get1(), t.get2()))
                                + s
                                + GOOD.substring(Math.max(t.get1(), t.get2()))));
  }

  @Property(tries = 500)
  void aMangledCardIsReadOrRefusedAndNothingElse(@ForAll("mangled") String yaml) {
    Map<String, String> files = new TreeMap<>(Map.of("holding/tall.yaml", yaml));
    GateResult result = GateTest.gate(Coverage.Demand.REPORT).check(files, GateTest.BY);
    if (result instanceof Rejected rejected) {
      assertThat(rejected.errors())
          .isNotEmpty()
          .allSatisfy(e -> assertThat(e.message()).isNotBlank());
    }
  }

  @Property(tries = 300)
  void anyTextIsReadOrRefusedAndNothingElse(@ForAll String yaml) {
    CardReader.Outcome outcome = CardReader.read("data/x.yaml", yaml);
    List<CardError> errors = new ArrayList<>(outcome.errors());
    assertThat(errors).isNotEmpty().hasSizeLessThanOrEqualTo(CardLimits.MAX_ERRORS);
  }
}
