package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class RequestMutationTest {

  private static final JsonNode OTHERS =
      Seeds.json(
          "[null, true, false, 0, -1, 1, 0.001, 1e300, -1e300, 1e-300, 123456789012345678901234567890,"
              + " '', 'x', '+x', 'inch', 'climb', 'hand', 'fixed jaw', {}, [], [[]], {'value':1},"
              + " {'low':1,'high':2}, {'low':2,'high':1,'unit':'in'}, {'value':1,'unit':'N'}, [1,2],"
              + " {'name':'x'}, {'unit':{}}, 'broad side', 'top edge', 'end mill 12 HSS, worn']");

  /** Changes the request in a few places; whatever comes, the reader answers. */
  @Property(tries = 1000)
  void whateverIsChangedTheReaderAnswersAndSaysWhy(
      @ForAll @IntRange(max = 11) int seed,
      @ForAll boolean inFull,
      @ForAll @Size(min = 1, max = 6) List<@IntRange(max = 1_000_000) Integer> picks) {
    ObjectNode request =
        (ObjectNode) Seeds.json(Seeds.text(Seeds.setups().get(seed)).replace('\'', ' '));
    if (inFull) {
      request = CanonicalText.request(Seeds.accepted(request), Seeds.accepted(request).units());
    }
    for (int pick : picks) {
      change(request, pick);
    }
    Reading reading = Seeds.READER.read(request);
    if (reading instanceof Reading.Refused refused) {
      assertThat(refused.problems()).isNotEmpty().hasSizeLessThanOrEqualTo(201);
      assertThat(refused.problems()).allMatch(p -> !p.message().isBlank());
    } else {
      String text = CanonicalText.of(((Reading.Accepted) reading).setup());
      assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
    }
    assertThat(Seeds.READER.readJson(request.toString()).getClass()).isEqualTo(reading.getClass());
  }

  /** Cuts the text off, or puts a character into it. */
  @Property
  void textThatWasCutOrSpoiltIsAnsweredToo(
      @ForAll @IntRange(max = 11) int seed,
      @ForAll @IntRange(max = 5000) int at,
      @ForAll char put,
      @ForAll boolean cutOff) {
    String text = Seeds.text(Seeds.setups().get(seed));
    int place = at % text.length();
    String rest = cutOff ? "" : text.substring(place + 1);
    Reading reading = Seeds.READER.readJson(text.substring(0, place) + put + rest);
    if (reading instanceof Reading.Refused refused) {
      assertThat(refused.problems()).isNotEmpty().allMatch(p -> !p.message().isBlank());
    } else {
      assertThat(cutOff && place < text.length() - 2).isFalse();
    }
  }

  private static void change(ObjectNode request, int pick) {
    List<JsonNode> containers = new ArrayList<>();
    collect(request, containers);
    JsonNode container = containers.get(pick % containers.size());
    JsonNode other = OTHERS.get(pick / 7 % OTHERS.size()).deepCopy();
    if (container instanceof ObjectNode object && !object.isEmpty()) {
      List<String> names = List.copyOf(object.propertyNames());
      String name = names.get(pick / 3 % names.size());
      switch (pick % 5) {
        case 0 -> object.remove(name);
        case 1 -> object.set(name + "x", other);
        default -> object.set(name, other);
      }
    } else if (container instanceof ArrayNode array) {
      array.add(other);
    }
  }

  private static void collect(JsonNode node, List<JsonNode> into) {
    if (node.isContainer()) {
      into.add(node);
      node.values().forEach(child -> collect(child, into));
    }
  }
}
