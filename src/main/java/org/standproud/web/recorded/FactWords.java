package org.standproud.web.recorded;

import java.util.stream.Collectors;
import org.standproud.assessment.FactValue;
import org.standproud.mechanics.evidence.Value;
import org.standproud.setup.UnitSystem;
import org.standproud.web.drawing.DistanceBar;

/** Words for a recorded fact with its value, in the units of the reader. */
public final class FactWords {

  private FactWords() {}

  /** As in "grip depth 8 mm" or "slip margin 0.21 (0.13 to 0.4)". */
  public static String of(FactValue fact, UnitSystem units) {
    FactValue.Numbers band = fact.band();
    if (band != null) {
      return fact.fact() + " " + words(band, fact, units);
    } else if (fact.bands() != null) {
      String each =
          fact.bands().stream()
              .map(b -> words(b, fact, units))
              .collect(Collectors.joining(Value.Quantities.THEN));
      return fact.fact() + " " + (each.isEmpty() ? Value.Quantities.NONE : each);
    } else if (fact.word() != null) {
      return fact.fact() + " " + fact.word();
    } else if (fact.yes() != null) {
      return fact.fact() + (fact.yes() ? ": yes" : ": no");
    }
    return fact.fact() + ": not known";
  }

  private static String words(FactValue.Numbers band, FactValue fact, UnitSystem units) {
    String likely = DistanceBar.words(band.likely(), fact.unit(), units);
    String low = DistanceBar.words(band.low(), fact.unit(), units);
    String high = DistanceBar.words(band.high(), fact.unit(), units);
    return low.equals(high) ? likely : likely + " (" + low + " to " + high + ")";
  }
}
