package org.standproud.rules.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Nearest;
import org.standproud.rules.language.Quantity;
import org.standproud.rules.language.UnitReader;
import org.standproud.setup.Band;

/**
 * Reads the values of an example: {@code 80 mm}, {@code 18 kN to 24 kN}, {@code 18 kN to 24 kN,
 * likely 20 kN}, a word, {@code true}, {@code unknown}.
 */
final class GivenValues {

  private static final Pattern BAND =
      Pattern.compile("(?<low>.+?) to (?<high>[^,]+)(?:, ?likely (?<likely>.+))?");

  private final FactTable facts;
  private final UnitReader units;

  GivenValues(FactTable facts, UnitReader units) {
    this.facts = facts;
    this.units = units;
  }

  /** The values of an example; what is wrong is added to the errors. */
  List<EvidenceValue> read(String file, Example example, List<CardError> errors) {
    List<EvidenceValue> values = new ArrayList<>();
    for (Map.Entry<String, Written> entry : example.given().entrySet()) {
      Fact fact = facts.find(entry.getKey());
      Written text = entry.getValue();
      if (fact == null) {
        errors.add(unknownFact(file, entry.getKey(), text));
        continue;
      }
      try {
        values.add(new EvidenceValue(fact, value(fact, text.text()), List.of(), List.of()));
      } catch (IllegalArgumentException e) {
        errors.add(CardError.at(file, text, fact.name() + ": " + e.getMessage()));
      }
    }
    return values;
  }

  private CardError unknownFact(String file, String name, Written at) {
    TreeSet<String> known = new TreeSet<>();
    facts.facts().forEach(f -> known.add(f.name()));
    return new CardError(
        file, at.line(), at.column(), name, "no fact has this name", Nearest.of(name, known), null);
  }

  private Value value(Fact fact, String text) {
    if (text.equals("unknown")) {
      return new Value.Missing("measure " + fact.name());
    }
    if (fact.type() instanceof Fact.Number number) {
      return new Value.Quantity(band(number, text));
    } else if (fact.type() instanceof Fact.Word word) {
      if (!word.allowed().contains(text)) {
        throw new IllegalArgumentException(
            "is one of: " + String.join(", ", word.allowed()) + ", unknown");
      }
      return new Value.Text(text);
    }
    if (!text.equals("true") && !text.equals("false")) {
      throw new IllegalArgumentException("is true, false or unknown");
    }
    return new Value.Truth(text.equals("true"));
  }

  private Band band(Fact.Number number, String text) {
    Matcher matcher = BAND.matcher(text);
    if (!matcher.matches()) {
      return Band.exactly(si(number, text));
    }
    double low = si(number, matcher.group("low"));
    double high = si(number, matcher.group("high"));
    @Nullable String likely = matcher.group("likely");
    if (low > high) {
      throw new IllegalArgumentException("the band is written from high to low");
    }
    return likely == null ? Band.between(low, high) : new Band(low, si(number, likely), high);
  }

  private double si(Fact.Number number, String text) {
    Quantity quantity = units.read(text.strip());
    if (quantity.dimension() != number.dimension()) {
      throw new IllegalArgumentException(
          "has the unit " + number.dimension().siUnit() + " or one of its kind");
    }
    if (quantity.si() < number.least() || quantity.si() > number.greatest()) {
      throw new IllegalArgumentException(
          "is between "
              + number.least()
              + " and "
              + number.greatest()
              + " "
              + number.dimension().siUnit());
    }
    return quantity.si();
  }
}
