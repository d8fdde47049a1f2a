package org.standproud.api.shop;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.standproud.rules.language.Quantity;
import org.standproud.rules.language.UnitReader;
import org.standproud.setup.units.Dimension;
import org.standproud.setup.units.UnitCode;

/** Reads quantities in cards with the units that requests are written in. */
public final class CardUnits implements UnitReader {

  private static final Pattern QUANTITY =
      Pattern.compile("(?<number>[-+]?[0-9]++(\\.[0-9]++)?([eE][-+]?[0-9]++)?) ?(?<unit>\\S*)");

  /** Keeps nothing. */
  public CardUnits() {}

  @Override
  public Quantity read(String text) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "is not a quantity: write a number and its unit, such as 12 mm");
    }
    double number = Double.parseDouble(matcher.group("number"));
    String code = matcher.group("unit");
    if (code.isEmpty()) {
      return new Quantity(number, Dimension.NUMBER);
    }
    UnitCode unit =
        UnitCode.of(code)
            .orElseThrow(
                () -> new IllegalArgumentException("has an unknown unit; the units are " + all()));
    return new Quantity(unit.toSi(number), unit.dimension());
  }

  private static String all() {
    return Arrays.stream(UnitCode.values()).map(UnitCode::code).collect(Collectors.joining(", "));
  }
}
