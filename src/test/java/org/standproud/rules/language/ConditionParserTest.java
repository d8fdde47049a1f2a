package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.rules.Shop;
import org.standproud.setup.Band;

class ConditionParserTest {

  private static final Map<String, Term.Limit> LIMITS =
      Map.of(
          "deep grip",
          new Term.Limit("deep grip", Shop.UNIT_READER.read("12 mm"), "12 mm"),
          "hard clamping",
          new Term.Limit("hard clamping", Shop.UNIT_READER.read("20 kN"), "20 kN"));

  private static final ConditionParser PARSER =
      new ConditionParser(Shop.TABLE, Set.of("light pass"));

  /** 75 mm above the jaws, 25 mm to 35 mm inside, rough, packed, 18 kN, stop not stated. */
  private static final Readings READINGS =
      Shop.readings(
          Shop.STICK_OUT,
          0.075,
          Shop.GRIP_DEPTH,
          new Band(0.025, 0.030, 0.035),
          Shop.STAGE,
          "rough",
          Shop.PACKED,
          true,
          Shop.CLAMPING,
          18e3,
          Shop.SLIP,
          -2.0);

  private static Condition parse(String text) throws ConditionRefused {
    return PARSER.parse(text, LIMITS);
  }

  @Test
  void everyFactOfTheVocabularyCanBeNamedInACondition() {
    FactTable all = new FactTable(Vocabulary.all());
    assertThat(new ConditionParser(all, Set.of()).unreadableNames()).isEmpty();
  }

  @Test
  void aFactWhoseNameTheLanguageCannotReadIsFoundOut() {
    Fact bad = new Fact("if + then", new Fact.YesNo(), "x", Shop.GIVEN);
    FactTable table = new FactTable(List.of(bad));
    assertThat(new ConditionParser(table, Set.of()).unreadableNames()).containsExactly("if + then");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stick-out > grip depth | TRUE",
        "stick-out / grip depth > 2.5 | EITHER",
        "stick-out / grip depth > 3.1 | FALSE",
        "stick-out / grip depth >= 2.1 and stage = \"rough\" | TRUE",
        "stick-out / grip depth > 2.5 and stage = \"finish\" | FALSE",
        "stick-out / grip depth > 2.5 or stage = \"rough\" | TRUE",
        "stage != \"rough\" | FALSE",
        "stage in (\"rough\", \"finish\") | TRUE",
        "stage in [\"finish\"] | FALSE",
        "not(stage = \"rough\") | FALSE",
        "packed | TRUE",
        "packed = false | FALSE",
        "packed != false | TRUE",
        "stop = \"none\" | UNKNOWN",
        "stop = null | TRUE",
        "stop != null | FALSE",
        "stage = null | FALSE",
        "stop = \"none\" and stage = \"finish\" | FALSE",
        "stop = \"none\" or stage = \"rough\" | TRUE",
        "stop = \"none\" and stick-out / grip depth > 2.5 | UNKNOWN",
        "stick-out between deep grip and 6 * deep grip | FALSE",
        "stick-out between deep grip and 7 * deep grip | TRUE",
        "grip depth in [deep grip .. 2 * deep grip] | FALSE",
        "grip depth in (> deep grip) | TRUE",
        "grip depth in > deep grip | TRUE",
        "grip depth in (< deep grip, >= 2 * deep grip) | TRUE",
        "stick-out - grip depth > 0 | TRUE",
        "-stick-out < 0 | TRUE",
        "abs(slip margin) = 2 | TRUE",
        "slip margin = 2 | FALSE",
        "max(stick-out, grip depth, deep grip) = stick-out | TRUE",
        "min([stick-out, deep grip]) < grip depth | TRUE",
        "clamping force < hard clamping | TRUE",
        "(if packed then 1 else 2) > slip margin + 3.5 | FALSE",
        "if packed then stage = \"rough\" else stage = \"finish\" | TRUE",
        "cutter diameter > 0 | UNKNOWN",
        "stick-out / slip margin > 0 | FALSE",
        "stick-out / (grip depth - grip depth) > 0 | UNKNOWN",
        "stick-out * clamping force / stick-out > hard clamping | FALSE",
        "light pass | UNKNOWN",
        "light pass or packed | TRUE"
      })
  void aConditionSaysWhatAMachinistWouldRead(String text, Truth expected) throws Exception {
    assertThat(parse(text).evaluate(READINGS, Judgements.NONE).truth()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stick-out > clamping force | a length cannot be compared with a force",
        "stick-out + clamping force > 0 | a force cannot be added to a length",
        "stick-out > 50 | a length cannot be compared with a pure number; give the limit its unit",
        "stick-out - 5 > 0 | a pure number cannot be added to a length",
        "stick-out / grip depth > deep grip | a pure number cannot be compared with a length",
        "stick-out * clamping force > hard clamping | a torque cannot be compared with a force",
        "stick-out / clamping force > 2 | a quantity in kg-1 s2 cannot be compared",
        "max(stick-out, clamping force) > 0 | a force cannot be held beside a length",
        "lean > 45 | an angle cannot be compared with a pure number",
        "stick-out in [1..2] | a length cannot be compared with a pure number",
        "stick-out between 1 and 2 | a length cannot be compared with a pure number",
        "(if packed then stick-out else clamping force) > 0 | a force cannot be chosen beside a",
        "stick-out * stick-out > deep grip | a quantity in m2 cannot be compared with a length"
      })
  void dimensionsThatDoNotFitAreRefused(String text, String reason) {
    assertThatThrownBy(() -> parse(text))
        .isInstanceOf(ConditionRefused.class)
        .hasMessageContaining(reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "some x in [stick-out, grip depth] satisfies x < deep grip | FALSE",
        "some x in [stick-out, grip depth] satisfies x > 2 * deep grip | TRUE",
        "every x in [stick-out, grip depth] satisfies x > deep grip | TRUE",
        "every x in [stick-out, grip depth] satisfies x > 2.5 * deep grip | EITHER",
        "some push in [slip margin, -slip margin] satisfies push > 1.5 | TRUE",
        "some x in [stage, \"finish\"] satisfies stage = \"rough\" | TRUE",
        "some word in [\"rough\", \"finish\"] satisfies stage = word | TRUE",
        "every word in [\"rough\", \"finish\"] satisfies stage = word | FALSE",
        "some word in [\"rough\", \"finish\"] satisfies stage in [word] | TRUE",
        "some fact in [stage, operation] satisfies fact = null | TRUE",
        "some yes in [packed, light pass] satisfies yes | TRUE",
        "not(some x in [stick-out, grip depth + stick-out] satisfies x < deep grip) | TRUE",
        "some x in [max(stick-out, grip depth)] satisfies x in [deep grip .. 8 * deep grip] | TRUE",
      })
  void someAndEveryRunOverAListWrittenOut(String text, Truth truth) throws Exception {
    assertThat(parse(text).evaluate(READINGS, Judgements.NONE).truth()).isEqualTo(truth);
  }

  @Test
  void someSaysItsMembersInWords() throws Exception {
    assertThat(parse("some x in [stick-out, grip depth] satisfies x < deep grip").toWords())
        .isEqualTo(
            "stick-out is less than deep grip (12 mm)"
                + " or grip depth is less than deep grip (12 mm)");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "some x in stick-out satisfies x > 0",
        "some x in [] satisfies x > 0",
        "some x in 1..3 satisfies x > slip margin",
        "some x in [1..3] satisfies x > slip margin",
        "some x in [x + 1] satisfies x > slip margin",
        "some stick-out in [grip depth] satisfies stick-out > 0",
        "some x in [stick-out], y in [grip depth] satisfies x > y",
        "some x in [stick-out] satisfies some y in [grip depth] satisfies x > y",
        "some x in [stick-out, slip margin] satisfies x > deep grip",
        "some x in [stick-out] satisfies x.class = 1",
        "some x in [function(a) a] satisfies x(stick-out) > 0",
        "some x in [1,2,3,4,5,6,7,8,9] satisfies x > slip margin",
        "(some x in [stick-out] satisfies x > 0) + 1 > 0",
      })
  void someOverAnythingElseIsRefused(String text) {
    assertThatThrownBy(() -> parse(text)).isInstanceOf(ConditionRefused.class);
  }

  private static Truth ofPasses(String text, Object... depthsM) throws ConditionRefused {
    return parse(text)
        .evaluate(Shop.readings(Shop.DEPTHS, List.of(depthsM)), Judgements.NONE)
        .truth();
  }

  private static final String SOME_DEEP = "some d in depths of passes satisfies d > deep grip";
  private static final String EVERY_DEEP = "every d in depths of passes satisfies d > deep grip";

  @Test
  void onePassThatIsTooDeepIsEnoughForSomeAndNotForEvery() throws Exception {
    assertThat(ofPasses(SOME_DEEP, 0.010, 0.013, 0.011)).isEqualTo(Truth.TRUE);
    assertThat(ofPasses(EVERY_DEEP, 0.010, 0.013, 0.011)).isEqualTo(Truth.FALSE);
    assertThat(ofPasses(EVERY_DEEP, 0.013, 0.013)).isEqualTo(Truth.TRUE);
    assertThat(ofPasses(SOME_DEEP, 0.010, 0.011)).isEqualTo(Truth.FALSE);
  }

  @Test
  void aPassThatMayBeTooDeepLeavesItEither() throws Exception {
    Band around = new Band(0.011, 0.012, 0.013);
    assertThat(ofPasses(SOME_DEEP, 0.010, around)).isEqualTo(Truth.EITHER);
    assertThat(ofPasses(EVERY_DEEP, 0.014, around)).isEqualTo(Truth.EITHER);
    assertThat(ofPasses(SOME_DEEP, 0.014, around)).isEqualTo(Truth.TRUE);
    assertThat(ofPasses(EVERY_DEEP, 0.010, around)).isEqualTo(Truth.FALSE);
  }

  @Test
  void passesNotGivenLeaveItOpenAndAreNotAPlanOfNone() throws Exception {
    assertThat(parse(SOME_DEEP).evaluate(READINGS, Judgements.NONE).truth())
        .isEqualTo(Truth.UNKNOWN);
    assertThat(parse(EVERY_DEEP).evaluate(READINGS, Judgements.NONE).truth())
        .isEqualTo(Truth.UNKNOWN);
    assertThat(parse(SOME_DEEP).unknowns(READINGS, Judgements.NONE))
        .singleElement()
        .asString()
        .startsWith("depths of passes is not known");
    assertThat(ofPasses(SOME_DEEP)).isEqualTo(Truth.FALSE);
    assertThat(ofPasses(EVERY_DEEP)).isEqualTo(Truth.TRUE);
    assertThat(ofPasses("depths of passes = null")).isEqualTo(Truth.FALSE);
    assertThat(parse("depths of passes = null").evaluate(READINGS, Judgements.NONE).truth())
        .isEqualTo(Truth.TRUE);
  }

  @Test
  void aPassMayBeHeldAgainstOtherFactsAndWhatIsMissingThereIsNamed() throws Exception {
    Condition against =
        parse("some d in depths of passes satisfies stick-out / d > 4 and stage = \"rough\"");
    Readings known =
        Shop.readings(
            Shop.DEPTHS, List.of(0.010, 0.030), Shop.STICK_OUT, 0.075, Shop.STAGE, "rough");
    assertThat(against.evaluate(known, Judgements.NONE).truth()).isEqualTo(Truth.TRUE);
    Readings perhapsNone =
        Shop.readings(
            Shop.DEPTHS,
            List.of(new Band(0, 0.010, 0.030)),
            Shop.STICK_OUT,
            0.075,
            Shop.STAGE,
            "rough");
    assertThat(against.evaluate(perhapsNone, Judgements.NONE).truth()).isEqualTo(Truth.UNKNOWN);
    assertThat(against.unknowns(perhapsNone, Judgements.NONE)).containsExactly("d may be zero");
  }

  @Test
  void aListIsWrittenInWords() throws Exception {
    assertThat(parse(SOME_DEEP).toWords())
        .isEqualTo("for some d of depths of passes, d is more than deep grip (12 mm)");
    assertThat(parse(EVERY_DEEP + " and packed").toWords())
        .isEqualTo("for every d of depths of passes, d is more than deep grip (12 mm) and packed");
    assertThat(parse("(" + EVERY_DEEP + ") and packed").toWords())
        .isEqualTo(
            "(for every d of depths of passes, d is more than deep grip (12 mm)) and packed");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "depths of passes > deep grip | this fact is a list",
        "depths of passes | this fact is a list",
        "max(depths of passes, deep grip) > stick-out | this fact is a list",
        "some d in depths of passes satisfies d > 12 | a length cannot be compared with a pure",
        "some d in depths of passes satisfies d > hard clamping | a length cannot be compared",
        "some d in depths of passes satisfies packed | does not use d",
        "some d in depths of passes satisfies d | a number is not a yes or no",
        "some d in depths of passes satisfies d = \"rough\" | only a fact that is a word",
        "some d in depths of passes satisfies d = null | only a fact can be compared with null",
        "some stage in depths of passes satisfies stage > deep grip | this name is taken",
        "some d in depths of passes satisfies some e in depths of passes satisfies e > d | run"
            + " over",
        "some d in depths of passes, e in depths of passes satisfies d > e | run over one list",
        "some d in [depths of passes] satisfies d > deep grip | this fact is a list",
        "count(depths of passes) > 2 | can be called",
        "depths of passes[1] > deep grip | filters are not part",
        "for d in depths of passes return d | for is not part",
      })
  void aListIsNothingButRunOver(String text, String reason) {
    assertThatThrownBy(() -> parse(text))
        .isInstanceOf(ConditionRefused.class)
        .hasMessageContaining(reason);
  }

  @Test
  void zeroFitsEveryDimension() throws Exception {
    assertThat(parse("stick-out > 0 and clamping force > 0 and lean >= 0 or slip margin < 0"))
        .isNotNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"abc\".class.name = \"java.lang.String\"",
        "stage.class.name = \"rough\"",
        "function(x) external { java: { class: \"java.lang.Runtime\" } }",
        "(function(x) x > 1)(2)",
        "{a: 1}.a > 0",
        "for x in [1,2] return x",
        "some x in [1,2] satisfies x > 1",
        "every x in [1,2] satisfies x > 1",
        "stage instance of string",
        "matches(stage, \"(a+)+$\")",
        "replace(stage, \"a\", \"b\") = \"rough\"",
        "@\"2020-01-01\" = @\"2020-01-01\"",
        "date(\"2020-01-01\") > 1",
        "[1,2,3][1] > slip margin",
        "stick-out ** 2 > 0",
        "string length(stage) > 1",
        "max(value: 3) > slip margin",
        "eval(\"true\")",
        "salience(10)",
        "new java.io.File(\"a\")",
        "java.lang.Runtime > 1",
        "stick-out > 1; slip margin > 2",
        "stage = \"rough\\u0022\"",
        "?",
        "-",
        "null",
        "true",
        "1 = 1",
        "\"rough\"",
        "5",
        "stage",
        "stick-out",
        "stick-out > null",
        "stage > \"rough\"",
        "stick-out = \"rough\"",
        "packed > 1",
        "packed = packed",
        "1 < slip margin < 3",
        "slip margin > 1e400",
        "stick-out / 0 > 1",
        "stage in (1, 2)",
        "slip margin in (\"rough\")",
        "slip margin in stage",
        "stick-out in []",
        "not()",
        "not(packed, packed)",
        "abs(stick-out, stick-out) > 0",
        "max() > 0",
        "if packed then 1 else 2",
        "max(stick-out)",
        "stick-out > // comment",
        "packed /* comment */",
        "[stick-out > 0]",
        "slip margin > 1 2",
        "(((((((((slip margin))))))))) > 1"
      })
  void whatIsNotPartOfTheLanguageIsRefusedWithAnExampleThatWorks(String text) {
    ConditionRefused refused = catchThrowableOfType(ConditionRefused.class, () -> parse(text));
    assertThat(refused).as(text).isNotNull();
    assertThat(refused.reason()).isNotBlank();
    assertThat(refused.line()).isEqualTo(1);
    assertThat(refused.column()).isBetween(1, text.length() + 1);
    assertThat(catchThrowableOfType(ConditionRefused.class, () -> parse(refused.example())))
        .as(refused.example())
        .isNull();
  }

  @Test
  void everyNameOfTheVocabularyReadsAsItself() throws Exception {
    for (Fact fact : Shop.VOCABULARY) {
      Condition condition = parse(fact.name() + " = null");
      assertThat(condition.toWords()).isEqualTo(fact.name() + " is not known");
    }
  }

  @Test
  void aConditionReadsAloud() throws Exception {
    assertThat(parse("(stick-out > 2 * deep grip or stage = \"rough\") and not(packed)").toWords())
        .isEqualTo(
            "(stick-out is more than 2 * deep grip (12 mm) or stage is rough) and not (packed)");
  }

  @Test
  void seventyFiveOverThirtyIsTwoAndAHalf() throws Exception {
    Readings atLimit = Shop.readings(Shop.STICK_OUT, 0.075, Shop.GRIP_DEPTH, 0.030);
    assertThat(parse("stick-out / grip depth > 2.5").evaluate(atLimit, Judgements.NONE).truth())
        .isEqualTo(Truth.FALSE);
    assertThat(parse("stick-out / grip depth >= 2.5").evaluate(atLimit, Judgements.NONE).truth())
        .isEqualTo(Truth.TRUE);
  }

  @Test
  void aDivisorThatIsZeroInSomeDrawsLeavesTheConditionUnknownAndSaysSo() throws Exception {
    Readings readings = Shop.readings(Shop.SLIP, new Band(0, 0.5, 1));
    Condition condition = parse("1 / slip margin > 2");
    assertThat(condition.evaluate(readings, Judgements.NONE).truth()).isEqualTo(Truth.UNKNOWN);
    assertThat(condition.unknowns(readings, Judgements.NONE))
        .containsExactly("slip margin may be zero");
  }
}
