package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Goes to both ends of every number a request may hold, found through the field descriptions. */
class FieldLimitsTest {

  record Limit(String pointer, Range range, boolean inList) {
    @Override
    public String toString() {
      return pointer;
    }
  }

  static Stream<Limit> limits() {
    List<Limit> limits = new ArrayList<>();
    walk("", RequestFields.SHAPE, limits);
    return limits.stream();
  }

  private static void walk(String above, ObjectSchema<?> shape, List<Limit> into) {
    for (Field<?, ?> field : shape.fields()) {
      String pointer = above + "/" + field.name();
      if (field instanceof ObjectField<?, ?> part) {
        walk(pointer, part.shape(), into);
      } else if (field instanceof ListField<?, ?> parts) {
        walk(pointer + "/0", parts.shape(), into);
      } else if (field instanceof Quantity<?> quantity) {
        into.add(new Limit(pointer, quantity.range(), false));
      } else if (field instanceof BandField<?> banded) {
        into.add(new Limit(pointer, banded.range(), false));
      } else if (field instanceof Quantities<?> quantities) {
        into.add(new Limit(pointer, quantities.range(), true));
      }
    }
  }

  @Test
  void thereAreAsManyNumbersAsTheRecordsHold() {
    assertThat(limits().count()).isGreaterThanOrEqualTo(70);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("limits")
  void aNumberBeyondItsRangeIsATypoAndOneAtItsEndIsNot(Limit limit) {
    for (UnitSystem units : UnitSystem.values()) {
      var unit = limit.range().kind().unit(units);
      double least = unit.fromSi(limit.range().least());
      double greatest = unit.fromSi(limit.range().greatest());
      double step = 1e-3 * (greatest - least);
      assertThat(outOfRange(limit, units, greatest + step)).isTrue();
      assertThat(outOfRange(limit, units, least - step)).isTrue();
      assertThat(outOfRange(limit, units, greatest)).isFalse();
      assertThat(outOfRange(limit, units, least)).isFalse();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("limits")
  void aTextOrAListIsNotANumber(Limit limit) {
    for (JsonNode wrong : Seeds.json("['12', true, {}, {'value':null}, {'low':1}, [[1]]]")) {
      ObjectNode request = full(UnitSystem.METRIC);
      put(request, limit, wrong);
      assertThat(Seeds.problems(request))
          .as("%s at %s", wrong, limit)
          .anyMatch(p -> p.pointer().startsWith(limit.pointer()));
    }
  }

  private static boolean outOfRange(Limit limit, UnitSystem units, double value) {
    ObjectNode request = full(units);
    put(request, limit, JsonNodeFactory.instance.numberNode(value));
    String pointer = limit.pointer() + (limit.inList() ? "/0" : "");
    return Seeds.problems(request).stream()
        .filter(
            p -> p.pointer().equals(pointer) && p.message().equals("this number is out of range"))
        .peek(p -> assertThat(p.allowed()).startsWith("from "))
        .peek(p -> assertThat(p.unit()).isEqualTo(limit.range().kind().unit(units).code()))
        .findAny()
        .isPresent();
  }

  private static ObjectNode full(UnitSystem units) {
    Setup setup = Seeds.accepted(Seeds.request("01"));
    ObjectNode request =
        CanonicalText.request(setup.with(setup.cut(), List.of(setup.asked())), units);
    for (String list : List.of("clamps", "backing")) {
      ArrayNode one = JsonNodeFactory.instance.arrayNode();
      one.add(JsonNodeFactory.instance.objectNode().put("side", "fixed jaw"));
      ((ObjectNode) request.get("hold")).set(list, one);
    }
    return request;
  }

  private static void put(ObjectNode request, Limit limit, JsonNode value) {
    int cut = limit.pointer().lastIndexOf('/');
    JsonNode owner = request.at(limit.pointer().substring(0, cut));
    JsonNode put = value;
    if (limit.inList()) {
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      put = list.add(value);
    }
    ((ObjectNode) owner).set(limit.pointer().substring(cut + 1), put);
  }

  @Test
  void theGuideHasTheMeaningAndTheRangeOfEveryField() {
    List<FieldGuide.Entry> guide = FieldGuide.entries(UnitSystem.INCH);
    assertThat(guide).extracting(FieldGuide.Entry::path).doesNotHaveDuplicates();
    assertThat(guide).allMatch(e -> !e.meaning().isBlank() && !e.allowed().isBlank());
    assertThat(guide)
        .contains(
            new FieldGuide.Entry(
                "/cutter/diameter",
                "DC, cutting diameter",
                true,
                "from 0.019685 to 19.685 in",
                FieldGuide.Sort.QUANTITY,
                QuantityKind.LENGTH,
                null));
  }

  @Test
  void whatIsAskedFirstIsOnTheListOfFieldsAndHoldsAboutTenQuestionsThatMustBeAnswered() {
    List<FieldGuide.Entry> first =
        FieldGuide.entries(UnitSystem.METRIC).stream().filter(e -> e.first() != null).toList();
    assertThat(first)
        .extracting(FieldGuide.Entry::path)
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(FieldGuide.Step.values())
                .flatMap(step -> FieldGuide.first(step).stream())
                .toList());
    List<String> optional =
        List.of("/hold/clampingForce", "/hold/handleTorque", "/cut/side", "/cut/radialDepth");
    assertThat(first).filteredOn(e -> !optional.contains(e.path())).hasSizeBetween(9, 11);
  }
}
