package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide.Entry;
import org.standproud.setup.request.FieldGuide.Sort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The word "unknown" is null, in every field that may be unknown; a free text keeps it. */
class UnknownWordTest {

  private static final List<String> NAMED = List.of("machine", "cutter", "vise", "material");

  static Stream<Entry> fieldsThatMayBeUnknown() {
    return FieldGuide.entries(UnitSystem.METRIC).stream()
        .filter(entry -> !entry.required() && entry.sort() != Sort.TEXT);
  }

  /** A set-up with a value at that path, or what holds it. */
  private static ObjectNode with(String path, JsonNode value) {
    ObjectNode setup = Seeds.request("01");
    JsonNode at = setup;
    String[] steps = path.substring(1).split("/");
    for (int i = 0; i < steps.length - 1; i++) {
      String step = steps[i];
      if (at instanceof ArrayNode list) {
        at = list.isEmpty() ? list.addObject() : list.get(0);
        continue;
      }
      ObjectNode object = (ObjectNode) at;
      JsonNode below = object.get(step);
      if (below == null || below.isString() && NAMED.contains(step)) {
        ObjectNode opened = JsonNodeFactory.instance.objectNode();
        if (below != null) {
          opened.set("name", below);
        }
        below = "*".equals(steps[i + 1]) ? JsonNodeFactory.instance.arrayNode() : opened;
        object.set(step, below);
      }
      at = below;
    }
    ((ObjectNode) at).set(steps[steps.length - 1], value);
    return setup;
  }

  private static Reading read(JsonNode request) {
    return Seeds.READER.read(request);
  }

  /** The set-up, or what is wrong and where. */
  private static Object said(JsonNode request) {
    Reading reading = read(request);
    return reading instanceof Reading.Refused refused
        ? refused.problems().stream().map(p -> p.pointer() + ": " + p.message()).toList()
        : reading;
  }

  @ParameterizedTest
  @MethodSource("fieldsThatMayBeUnknown")
  void theWordReadsAsNull(Entry field) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    Object none = said(with(field.path(), json.nullNode()));
    assertThat(said(with(field.path(), json.stringNode("unknown")))).isEqualTo(none);
    assertThat(said(with(field.path(), json.stringNode(" Unknown ")))).isEqualTo(none);
  }

  @Test
  void aFieldThatIsNeededSaysSo() {
    Reading word = read(with("/stock/length", JsonNodeFactory.instance.stringNode("unknown")));
    assertThat(((Reading.Refused) word).problems())
        .extracting(Problem::pointer)
        .containsExactly("/stock/length");
  }

  @Test
  void aFreeTextMayBeTheWord() {
    Reading word = read(with("/job/workMaster", JsonNodeFactory.instance.stringNode("unknown")));
    assertThat(((Reading.Accepted) word).setup().job().workMaster()).isEqualTo("unknown");
  }
}
