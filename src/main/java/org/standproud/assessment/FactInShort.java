package org.standproud.assessment;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.assessment.FactValue.Numbers;
import org.standproud.mechanics.evidence.Fact;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The value of a fact in the fewest characters: {@code [low, likely, high]} for a number, an array
 * of these for a list, the word, true or false, or {@code {"measure": question}} where it is not
 * known. A share of the draws below 1 follows a number, and a word or a truth in an array.
 *
 * @param json the value
 */
record FactInShort(@JsonValue JsonNode json) {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final String MEASURE = "measure";
  private static final int NUMBERS = 3;

  /** Reads a value. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  FactInShort {}

  static FactInShort of(FactValue value) {
    return new FactInShort(written(value));
  }

  private static JsonNode written(FactValue value) {
    if (value.band() != null) {
      ArrayNode numbers = numbers(value.band());
      if (value.share() != null) {
        numbers.add(ResultsInShort.draws(value.share()));
      }
      return numbers;
    } else if (value.bands() != null) {
      ArrayNode list = NODES.arrayNode();
      value.bands().forEach(band -> list.add(numbers(band)));
      return list;
    } else if (value.word() != null) {
      return shared(NODES.stringNode(value.word()), value.share());
    } else if (value.yes() != null) {
      return shared(NODES.booleanNode(value.yes()), value.share());
    }
    ObjectNode open = NODES.objectNode();
    return value.measure() == null ? open : open.put(MEASURE, value.measure());
  }

  private static ArrayNode numbers(Numbers band) {
    return NODES
        .arrayNode()
        .add(Figures.of(band.low()))
        .add(Figures.of(band.likely()))
        .add(Figures.of(band.high()));
  }

  private static JsonNode shared(JsonNode value, @Nullable Double share) {
    return share == null ? value : NODES.arrayNode().add(value).add(ResultsInShort.draws(share));
  }

  /**
   * The value in full.
   *
   * @param fact its fact
   * @param draws number of draws of the joint sample
   */
  FactValue of(Fact fact, int draws) {
    Fact.Number number = fact.number();
    return named(fact.name(), number == null ? null : number.dimension().siUnit(), draws);
  }

  /**
   * The value in full.
   *
   * @param name name of the fact
   * @param si its SI unit, if it is a number and the fact is known
   * @param draws number of draws of the joint sample
   */
  FactValue named(String name, @Nullable String si, int draws) {
    String unit = si == null ? null : FactValue.unit(si);
    JsonNode first = json.isArray() && !json.isEmpty() ? json.get(0) : json;
    JsonNode last = json.isArray() && !json.isEmpty() ? json.get(json.size() - 1) : json;
    if (first.isNumber()) {
      Double share = json.size() > NUMBERS ? (Double) (last.asDouble() / draws) : null;
      return new FactValue(name, band(json), null, unit, null, null, null, share);
    } else if (json.isArray() && (first.isArray() || json.isEmpty())) {
      List<Numbers> bands = new ArrayList<>();
      json.forEach(one -> bands.add(band(one)));
      return new FactValue(name, null, bands, unit, null, null, null, null);
    }
    Double share = json.isArray() ? (Double) (last.asDouble() / draws) : null;
    if (first.isString()) {
      return new FactValue(name, null, null, null, first.asString(), null, null, share);
    } else if (first.isBoolean()) {
      return new FactValue(name, null, null, null, null, first.asBoolean(), null, share);
    }
    String measure = json.path(MEASURE).asString(name);
    return new FactValue(name, null, null, null, null, null, measure, null);
  }

  private static Numbers band(JsonNode numbers) {
    return new Numbers(
        numbers.get(0).asDouble(), numbers.get(1).asDouble(), numbers.get(2).asDouble());
  }
}
