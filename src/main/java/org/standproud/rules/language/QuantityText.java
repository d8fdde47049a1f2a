package org.standproud.rules.language;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.units.UnitCode;

/**
 * Quantities in cards: a decimal number, followed by one of the units of {@link UnitCode}. Without
 * a unit it is a pure number.
 */
public final class QuantityText implements UnitReader {

  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<number>[+-]?\\d{1,15}(?:\\.\\d{1,15})?(?:[eE][+-]?\\d{1,3})?) ?(?<unit>\\D\\S*)?");

  /** Creates a reader for the units of requests. */
  public QuantityText() {}

  @Override
  public Quantity read(String text) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (!matcher.matches()) {
      throw new QuantityRefused("write a number and a unit, such as 12 mm", null);
    }
    String written = matcher.group("unit");
    UnitCode unit = written == null ? UnitCode.ONE : unit(written);
    double si = unit.toSi(Double.parseDouble(matcher.group("number")));
    if (!Double.isFinite(si)) {
      throw new QuantityRefused("the number is too large", null);
    }
    return new Quantity(si, unit.dimension());
  }

  /** A unit that differs only in case is the best match. */
  private static @Nullable String nearest(String written, List<String> codes) {
    return codes.stream()
        .filter(written::equalsIgnoreCase)
        .findFirst()
        .orElseGet(() -> Nearest.of(written, codes));
  }

  private static UnitCode unit(String written) {
    List<String> codes = Arrays.stream(UnitCode.values()).map(UnitCode::code).toList();
    return UnitCode.of(written)
        .orElseThrow(
            () ->
                new QuantityRefused(
                    "\"" + written + "\" is not a unit here; units are " + String.join(", ", codes),
                    nearest(written, codes)));
  }
}
