package org.standproud.rules.gate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.card.CardError;
import org.standproud.rules.card.Example;
import org.standproud.rules.card.Written;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.Nearest;
import org.standproud.rules.language.Quantity;
import org.standproud.rules.language.QuantityRefused;
import org.standproud.rules.language.UnitReader;
import org.standproud.setup.Band;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/**
 * Parses the values of an example: {@code 80 mm}, {@code 18 kN to 24 kN}, {@code 18 kN to 24 kN,
 * likely 20 kN}, a word, {@code true}, {@code unknown}; a list in its order {@code 3 mm then 1 mm},
 * or {@code none}.
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

  /** The values of an example; errors are added to the list. */
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
        errors.add(
            new CardError(
                file,
                text.line(),
                text.column(),
                text.text(),
                fact.name() + ": " + e.getMessage(),
                nearest(fact, text.text(), e),
                example(fact)));
      }
    }
    return values;
  }

  private CardError unknownFact(String file, String name, Written at) {
    TreeSet<String> known = new TreeSet<>();
    facts.facts().forEach(f -> known.add(f.name()));
    String near = Nearest.of(name, known);
    Fact fact = facts.find(near == null ? known.first() : near);
    return new CardError(
        file,
        at.line(),
        at.column(),
        name,
        "no fact has this name",
        near,
        fact == null ? null : example(fact));
  }

  private static @Nullable String nearest(Fact fact, String text, IllegalArgumentException e) {
    return fact.type() instanceof Fact.Word word
        ? Nearest.of(text, word.allowed())
        : QuantityRefused.nearest(e);
  }

  /** A value that works: in the middle of the range, in a shop's unit. */
  private static String example(Fact fact) {
    Fact.Number number = fact.number();
    if (number != null) {
      QuantityKind.Shown least = number.kind().show(number.least(), UnitSystem.METRIC);
      String unit = least.unit().code().equals("1") ? "" : " " + least.unit().code();
      double from = Math.max(0, least.value());
      double to = number.kind().show(number.greatest(), UnitSystem.METRIC).value();
      String value =
          BigDecimal.valueOf(Math.min(to, from + (to - from) / 100))
              .round(new MathContext(2))
              .stripTrailingZeros()
              .toPlainString();
      return fact.name() + ": " + value + unit;
    }
    return fact.name()
        + ": "
        + (fact.type() instanceof Fact.Word word ? word.allowed().get(0) : "true");
  }

  private Value value(Fact fact, String text) {
    if (text.equals("unknown")) {
      return new Value.Missing("measure " + fact.name());
    }
    if (fact.type() instanceof Fact.Number number) {
      return new Value.Quantity(Sample.spread(band(number, text), fact.name().hashCode()));
    } else if (fact.type() instanceof Fact.Numbers list) {
      return list(list.each(), text);
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

  private Value list(Fact.Number each, String text) {
    if (text.equals(Value.Quantities.NONE)) {
      return new Value.Quantities(List.of());
    }
    List<Band> bands = new ArrayList<>();
    for (String one : text.split(Value.Quantities.THEN, -1)) {
      bands.add(band(each, one));
    }
    return new Value.Quantities(bands);
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
