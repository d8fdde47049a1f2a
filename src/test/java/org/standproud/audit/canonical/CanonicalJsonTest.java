package org.standproud.audit.canonical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.erdtman.jcs.JsonCanonicalizer;
import org.erdtman.jcs.NumberToJSON;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.node.DoubleNode;
import tools.jackson.databind.node.FloatNode;
import tools.jackson.databind.node.JsonNodeFactory;

class CanonicalJsonTest {

  // Test data published with the scheme: github.com/cyberphone/json-canonicalization, testdata/
  // [found]; RFC 8785 itself names it as its test data.
  @ParameterizedTest
  @ValueSource(strings = {"arrays", "french", "structures", "unicode", "values", "weird"})
  void thePublishedTestDataOfTheSchemeComesOutByteForByte(String name) throws IOException {
    CanonicalJson found = CanonicalJson.parse(published("input", name));

    assertThat(found.text()).isEqualTo(published("output", name));
  }

  // RFC 8785 appendix B, "Number Serialization Samples" [memory]; the lines for 1e+21, 0.000001,
  // 9.999999999999997e-7 and 9007199254740994 also stand in the testdata README named above
  // [found].
  @ParameterizedTest
  @CsvSource({
    "0000000000000000, 0",
    "8000000000000000, 0",
    "0000000000000001, 5e-324",
    "8000000000000001, -5e-324",
    "7fefffffffffffff, 1.7976931348623157e+308",
    "ffefffffffffffff, -1.7976931348623157e+308",
    "4340000000000000, 9007199254740992",
    "c340000000000000, -9007199254740992",
    "4340000000000001, 9007199254740994",
    "4430000000000000, 295147905179352830000",
    "44b52d02c7e14af5, 9.999999999999997e+22",
    "44b52d02c7e14af6, 1e+23",
    "44b52d02c7e14af7, 1.0000000000000001e+23",
    "444b1ae4d6e2ef4e, 999999999999999700000",
    "444b1ae4d6e2ef4f, 999999999999999900000",
    "444b1ae4d6e2ef50, 1e+21",
    "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
    "3eb0c6f7a0b5ed8d, 0.000001",
    "41b3de4355555553, 333333333.3333332",
    "41b3de4355555554, 333333333.33333325",
    "41b3de4355555555, 333333333.3333333",
    "41b3de4355555556, 333333333.3333334",
    "41b3de4355555557, 333333333.33333343",
    "becbf647612f3696, -0.0000033333333333333333",
    "43143ff3c1cb0959, 1424953923781206.2"
  })
  void numbersAreWrittenAsTheStandardsSamplesAre(String bits, String expected) {
    double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));

    assertThat(CanonicalJson.of(DoubleNode.valueOf(number)).text()).isEqualTo(expected);
  }

  @Property
  void aNumberReadFromItsCanonicalTextIsTheSameNumber(@ForAll double number) {
    String text = CanonicalJson.of(DoubleNode.valueOf(number)).text();

    assertThat(Double.parseDouble(text)).isEqualTo(number == 0 ? 0.0 : number);
    assertThat(CanonicalJson.parse(text).text()).isEqualTo(text);
  }

  /** The library that the author of RFC 8785 published beside it. */
  @Property(tries = 20_000)
  void everyNumberIsWrittenAsTheReferenceOfTheSchemeDoes(
      @ForAll @LongRange(min = -1L << 52, max = 1L << 52) long digits,
      @ForAll @IntRange(min = -70, max = 20) int power)
      throws IOException {
    double number = Math.scalb((double) digits, power);

    assertThat(CanonicalJson.of(DoubleNode.valueOf(number)).text())
        .isEqualTo(NumberToJSON.serializeNumber(number));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e7, 0.1, 0.3, 1.1, 123456.789, 2e-3, 1e-6, 1e15, 1e21})
  void nextToWhereTheFormChangesTooNumbersAreWrittenAsTheReferenceDoes(double number)
      throws IOException {
    for (double one : new double[] {Math.nextDown(number), number, Math.nextUp(number)}) {
      assertThat(CanonicalJson.of(DoubleNode.valueOf(one)).text())
          .isEqualTo(NumberToJSON.serializeNumber(one));
    }
  }

  @Property
  void whatIsCanonicalStaysAsItIs(@ForAll @Size(max = 6) Map<String, Double> members) {
    var tree = JsonNodeFactory.instance.objectNode();
    members.forEach((name, number) -> tree.put(whole(name), number));
    CanonicalJson once = CanonicalJson.of(tree);

    assertThat(CanonicalJson.parse(once.text())).isEqualTo(once);
  }

  @Property
  void anObjectPutTogetherFromCanonicalMembersIsCanonical(
      @ForAll @Size(max = 6) Map<String, Double> members) {
    var tree = JsonNodeFactory.instance.objectNode();
    members.forEach((name, number) -> tree.put(whole(name), number));
    Map<String, CanonicalJson> parts = new java.util.HashMap<>();
    tree.properties().forEach(m -> parts.put(m.getKey(), CanonicalJson.of(m.getValue())));

    assertThat(CanonicalJson.object(parts)).isEqualTo(CanonicalJson.of(tree));
  }

  // Another implementation of RFC 8785: org.erdtman.jcs, by the authors of the scheme.
  @Property
  void anyTreeIsWrittenAsTheSchemesOwnImplementationWritesIt(
      @ForAll @Size(max = 8) Map<String, List<String>> members, @ForAll double number)
      throws IOException {
    var tree = JsonNodeFactory.instance.objectNode();
    members.forEach(
        (name, texts) -> {
          var array = tree.putObject(whole(name)).putArray("in\u0001\"\\\n");
          texts.forEach(text -> array.add(whole(text)).add(number).addNull().add(true).add(7));
        });

    assertThat(CanonicalJson.of(tree).text())
        .isEqualTo(new JsonCanonicalizer(tree.toString()).getEncodedString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"9007199254740993", "[-9007199254740993]", "{\"a\":1e400}"})
  void aNumberThatWouldBeRoundedIsRefused(String json) {
    assertThatThrownBy(() -> CanonicalJson.parse(json)).isInstanceOf(NotCanonical.class);
  }

  @Test
  void aNumberThatIsNotFiniteIsRefused() {
    assertThatThrownBy(() -> CanonicalJson.of(DoubleNode.valueOf(Double.NaN)))
        .isInstanceOf(NotCanonical.class);
    assertThatThrownBy(() -> CanonicalJson.of(FloatNode.valueOf(Float.NaN)))
        .isInstanceOf(NotCanonical.class);
    assertThatThrownBy(() -> CanonicalJson.of(DoubleNode.valueOf(Double.NEGATIVE_INFINITY)))
        .isInstanceOf(NotCanonical.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "{\"a\":1,\"a\":2}", "[1] 2", "nul", "\"\\ud83d\""})
  void aTextThatIsNotJsonOrSaysAThingTwiceIsRefused(String json) {
    assertThatThrownBy(() -> CanonicalJson.parse(json)).isInstanceOf(NotCanonical.class);
  }

  /** Longer than any buffer on the way, with characters of one to four bytes at every place. */
  @Test
  void aLongTextIsWrittenAsTheSchemesOwnImplementationWritesIt() throws IOException {
    for (int before = 0; before < 5; before++) {
      String text = "x".repeat(before) + "\u00e9\u20ac\ud83d\ude00\u0007a".repeat(20_000);
      var tree = JsonNodeFactory.instance.objectNode().put("long", text);
      assertThat(CanonicalJson.of(tree).text())
          .isEqualTo(new JsonCanonicalizer(tree.toString()).getEncodedString());
    }
  }

  @Test
  void aValueOutOfOrderOrWithHalfACharacterIsRefused() {
    assertThat(CanonicalJson.written(out -> pair(out, "a", "b")).text())
        .isEqualTo("{\"a\":1,\"b\":1}");
    assertThatThrownBy(() -> CanonicalJson.written(out -> pair(out, "b", "a")))
        .isInstanceOf(NotCanonical.class)
        .hasMessage("member a comes after b");
    assertThatThrownBy(() -> CanonicalJson.written(out -> out.writeString("half \ud83d")))
        .isInstanceOf(NotCanonical.class);
    assertThatThrownBy(() -> CanonicalJson.written(out -> out.writeString("\ude00 half")))
        .isInstanceOf(NotCanonical.class);
    assertThat(CanonicalJson.written(out -> out.writeString("\\ud83d \u0007")).text())
        .isEqualTo("\"\\\\ud83d \\u0007\"");
    assertThatThrownBy(() -> CanonicalJson.written(out -> pair(out, "half \ud83d", "b")))
        .isInstanceOf(NotCanonical.class);
    assertThatThrownBy(() -> CanonicalJson.written(out -> out.writeBinary(new byte[1])))
        .isInstanceOf(NotCanonical.class);
  }

  private static void pair(JsonGenerator out, String first, String second) {
    out.writeStartObject();
    out.writeNumberProperty(first, 1.0);
    out.writeNumberProperty(second, 1L);
    out.writeEndObject();
  }

  @Test
  void numbersAreWrittenAlikeByEveryPath() {
    CanonicalJson written =
        CanonicalJson.written(
            out -> {
              out.writeStartArray();
              out.writeNumber((short) 5);
              out.writeNumber(5);
              out.writeNumber(5L);
              out.writeNumber(BigInteger.valueOf(5));
              out.writeNumber(5.0);
              out.writeNumber(0.1f);
              out.writeNumber(new BigDecimal("5.000"));
              out.writeNumber("5e0");
              out.writeNumber(9007199254740992L);
              out.writeNumber(1e15);
              out.writeNumber(-999999999999999.0);
              out.writeNumber(-0.0);
              out.writeArray(new double[] {0, 5, 0.5, 0}, 1, 2);
              out.writeArray(new long[] {0, 5, 6, 0}, 1, 2);
              out.writeEndArray();
            });
    assertThat(written.text())
        .isEqualTo(
            "[5,5,5,5,5,0.1,5,5,9007199254740992,1000000000000000,-999999999999999,0,[5,0.5],[5,6]]");
    assertThatThrownBy(() -> CanonicalJson.written(out -> out.writeNumber(9007199254740993L)))
        .isInstanceOf(NotCanonical.class);
  }

  private static String whole(String text) {
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }

  private static String published(String side, String name) throws IOException {
    String path = "/audit/rfc8785/" + side + "/" + name + ".json";
    try (InputStream in = CanonicalJsonTest.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
