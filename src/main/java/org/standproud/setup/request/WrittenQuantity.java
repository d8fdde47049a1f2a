package org.standproud.setup.request;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number or a range as a person writes it, with its unit behind it: {@code 40}, {@code .625},
 * {@code 5/8"}, {@code 1 1/2 in}, {@code 2,5 mm}, {@code 15-22 kN}, {@code 25 to 35 kN, likely 30}.
 *
 * @param low the number, or the low end of a range
 * @param likely the likely value of a range; null if it is not written
 * @param high the high end of a range; null for a single number
 * @param unit the unit as written; null if there is none
 */
public record WrittenQuantity(
    BigDecimal low, @Nullable BigDecimal likely, @Nullable BigDecimal high, @Nullable String unit) {

  private static final int LONGEST = 120;

  /** A whole number before a fraction stands off by a blank or a hyphen. */
  private static final String NUMBER =
      "[-+]?(?:(?:[0-9]{1,6}[ -])?[0-9]{1,6} ?/ ?[0-9]{1,6}"
          + "|[0-9]{1,15}(?:,[0-9]{1,30}|\\.(?!\\.)[0-9]{0,30}){0,5}|[.,][0-9]{1,30})";

  private static final Pattern FIRST = Pattern.compile("(" + NUMBER + ")(.*)");
  private static final Pattern SECOND =
      Pattern.compile(" ?([^0-9 -]*?) ?(?:to|-|\\.{2,3}) ?(" + NUMBER + ")(.*)");
  private static final Pattern LIKELY = Pattern.compile("([^,]*?),? ?likely ?(" + NUMBER + ")(.*)");
  private static final Pattern UNIT =
      Pattern.compile("(?:1/)?[\\p{L}°%\"'/][\\p{L}0-9°%\"'/.·⋅∙•^* -]*");
  private static final Pattern FRACTION =
      Pattern.compile("([-+]?)(?:([0-9]+)[ -])?([0-9]+) ?/ ?([0-9]+)");
  private static final Pattern AMBIGUOUS = Pattern.compile("[-+]?[1-9][0-9]{0,2},[0-9]{3}");
  private static final Pattern COMMA_GROUPS =
      Pattern.compile("[-+]?[0-9]{1,3}(?:,[0-9]{3})+(?:\\.[0-9]*)?");
  private static final Pattern POINT_GROUPS =
      Pattern.compile("[-+]?[0-9]{1,3}(?:\\.[0-9]{3})+(?:,[0-9]*)?");
  private static final Pattern SIMPLE = Pattern.compile("[-+]?[0-9]*[.,]?[0-9]*");

  /** Text that is no quantity, or could be two; the message says what to write. */
  public static final class Unclear extends Exception {
    private static final long serialVersionUID = 1L;

    Unclear(String message) {
      super(message);
    }
  }

  /**
   * Reads a text.
   *
   * @param text what was written
   * @throws Unclear if it is no quantity, or could be two
   */
  public static WrittenQuantity of(String text) throws Unclear {
    if (text.length() > LONGEST) {
      throw new Unclear("this is too long for a number");
    }
    Matcher first = FIRST.matcher(plain(text));
    if (!first.matches()) {
      throw new Unclear(Problem.NO_NUMBER);
    }
    Set<String> units = new TreeSet<>();
    String rest = first.group(2);
    BigDecimal high = null;
    BigDecimal likely = null;
    Matcher second = SECOND.matcher(rest);
    if (second.matches() && !rest.strip().equals("min-1")) {
      units.add(second.group(1).strip());
      high = number(second.group(2));
      rest = second.group(3);
      Matcher marked = LIKELY.matcher(rest);
      if (marked.matches()) {
        units.add(marked.group(1).strip());
        likely = number(marked.group(2));
        rest = marked.group(3);
      }
    }
    units.add(rest.strip());
    units.remove("");
    return new WrittenQuantity(number(first.group(1)), likely, high, unit(units));
  }

  private static @Nullable String unit(Set<String> written) throws Unclear {
    if (written.size() > 1) {
      throw new Unclear("write one unit, behind the last number");
    }
    for (String unit : written) {
      if (!UNIT.matcher(unit).matches()) {
        throw new Unclear("enter one number, without blanks in it, with its unit behind it");
      }
      return unit;
    }
    return null;
  }

  /** One sign for each meaning: keyboards, phones and text editors put in many. */
  private static String plain(String text) {
    String apart = text.replaceAll("(?<=[0-9])(?=[¼-¾⅐-⅞])", " ").replace("min⁻¹", "1/min");
    return Normalizer.normalize(apart.replace('″', '"'), Normalizer.Form.NFKC)
        .replace('⁄', '/')
        .replaceAll("[‐-―−]", "-")
        .replaceAll("[“”″]|''|′′", "\"")
        .replace('μ', 'µ')
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static BigDecimal number(String digits) throws Unclear {
    Matcher fraction = FRACTION.matcher(digits);
    if (fraction.matches()) {
      return fraction(fraction, digits);
    }
    if (AMBIGUOUS.matcher(digits).matches()) {
      String joined = digits.replace(",", "");
      throw new Unclear(
          digits + " could be " + joined + " or " + decimal(digits) + "; type the one you mean");
    }
    if (SIMPLE.matcher(digits).matches()) {
      return decimal(digits);
    }
    if (COMMA_GROUPS.matcher(digits).matches()) {
      return decimal(digits.replace(",", ""));
    }
    if (POINT_GROUPS.matcher(digits).matches()) {
      return decimal(digits.replace(".", ""));
    }
    throw new Unclear("use one decimal point and no other marks in " + digits);
  }

  private static BigDecimal decimal(String digits) {
    return new BigDecimal(digits.replace(',', '.').replaceAll("\\.$", ""));
  }

  private static BigDecimal fraction(Matcher parts, String digits) throws Unclear {
    BigDecimal above = new BigDecimal(parts.group(3));
    BigDecimal below = new BigDecimal(parts.group(4));
    boolean mixed = parts.group(2) != null;
    if (below.signum() == 0 || (mixed && above.compareTo(below) >= 0)) {
      throw new Unclear(digits + " is no fraction; type it like 1 1/2 or as a decimal");
    }
    BigDecimal whole = mixed ? new BigDecimal(parts.group(2)) : BigDecimal.ZERO;
    BigDecimal size = whole.add(above.divide(below, MathContext.DECIMAL64));
    return parts.group(1).equals("-") ? size.negate() : size;
  }
}
