package org.standproud.rules;

import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.rules.language.FactTable;
import org.standproud.rules.language.QuantityText;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.UnitReader;
import org.standproud.setup.Band;
import org.standproud.setup.units.Dimension;

/** A small vocabulary and a reader of units for the tests of rules. */
public final class Shop {

  /** Where the values of these facts come from does not matter to rules. */
  public static final Fact.Origin GIVEN = new Fact.Computed(Shop.class, null);

  public static final Fact STICK_OUT = length("stick-out");
  public static final Fact GRIP_DEPTH = length("grip depth");
  public static final Fact THICKNESS = length("stock thickness");
  public static final Fact CUTTER = length("cutter diameter");
  public static final Fact SLIP = number("slip margin", Dimension.NUMBER, -1e3, 1e3);
  public static final Fact CLAMPING = number("clamping force", Dimension.FORCE, 0, 1e6);
  public static final Fact LEAN = number("lean", Dimension.ANGLE, -4, 4);
  public static final Fact STAGE = words("stage", "rough", "finish");
  public static final Fact OPERATION = words("operation", "top edge", "broad side");
  public static final Fact STOP = words("stop", "none", "left", "right");
  public static final Fact PACKED = new Fact("packed", new Fact.YesNo(), "packing is used", GIVEN);

  public static final Fact DEPTHS =
      new Fact(
          "depths of passes",
          new Fact.Numbers(new Fact.Number(Dimension.LENGTH, 0, 10)),
          "depths",
          GIVEN);

  public static final List<Fact> VOCABULARY =
      List.of(
          STICK_OUT,
          GRIP_DEPTH,
          THICKNESS,
          CUTTER,
          SLIP,
          CLAMPING,
          LEAN,
          STAGE,
          OPERATION,
          STOP,
          PACKED,
          DEPTHS);

  public static final FactTable TABLE = new FactTable(VOCABULARY);

  public static final UnitReader UNIT_READER = new QuantityText();

  private Shop() {}

  private static Fact length(String name) {
    return number(name, Dimension.LENGTH, 0, 10);
  }

  private static Fact number(String name, Dimension dimension, double least, double greatest) {
    return new Fact(name, new Fact.Number(dimension, least, greatest), name, GIVEN);
  }

  private static Fact words(String name, String... allowed) {
    return new Fact(name, new Fact.Word(List.of(allowed)), name, GIVEN);
  }

  /**
   * Evidence of facts and values in turn, bands independent of each other: a number in SI, a band,
   * a list, a word, a truth.
   */
  public static Evidence evidence(Object... factsAndValues) {
    List<EvidenceValue> values = new ArrayList<>();
    for (int i = 0; i < factsAndValues.length; i += 2) {
      Fact fact = (Fact) factsAndValues[i];
      Value value = value(factsAndValues[i + 1], fact.name().hashCode());
      values.add(new EvidenceValue(fact, value, List.of(), List.of()));
    }
    return new Evidence(values);
  }

  private static Value value(Object v, int stream) {
    if (v instanceof Band band) {
      return new Value.Quantity(Sample.spread(band, stream));
    } else if (v instanceof Double number) {
      return new Value.Quantity(Band.exactly(number));
    } else if (v instanceof List<?> list) {
      return new Value.Quantities(
          list.stream()
              .map(one -> one instanceof Band band ? band : Band.exactly((Double) one))
              .toList());
    }
    return v instanceof Boolean yes ? new Value.Truth(yes) : new Value.Text((String) v);
  }

  /** Readings of facts and values in turn. */
  public static Readings readings(Object... factsAndValues) {
    return new Readings(TABLE, evidence(factsAndValues));
  }
}
