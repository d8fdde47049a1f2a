package org.standproud.web.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.FieldGuide;
import org.standproud.setup.request.WrittenQuantity;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;

/**
 * Shows the values of a form in the other units. Hidden fields keep the typed text, which counts
 * until the displayed number is edited, so that switching back and forth changes nothing. Text with
 * its own unit, and text that is not a number, stays.
 */
final class UnitSwitch {

  /** Prefix of the hidden field with the typed text of a field. */
  static final String TYPED = "typed:";

  private static final String SEPARATOR = "|";
  private static final MathContext SHOWN = new MathContext(6);

  private UnitSwitch() {}

  /**
   * The same form in other units.
   *
   * @param values values of its fields, hidden ones included
   * @param from its units
   * @param to the units to show
   */
  static Map<String, String> converted(Map<String, String> values, UnitSystem from, UnitSystem to) {
    Map<String, String> after = new HashMap<>(values);
    if (from == to) {
      return after;
    }
    Map<String, Numbers> numbers = numbers();
    values.forEach(
        (path, text) -> {
          Numbers kind = numbers.get(pattern(path));
          if (kind != null && !text.isBlank()) {
            convert(path, text.strip(), kind, from, to, after);
          }
        });
    return after;
  }

  private static void convert(
      String path,
      String text,
      Numbers numbers,
      UnitSystem from,
      UnitSystem to,
      Map<String, String> into) {
    Typed typed = Typed.of(into.remove(TYPED + path));
    if (typed != null && typed.shown().equals(text) && typed.units() == to) {
      into.put(path, typed.text());
      return;
    }
    UnitCode is = numbers.kind().unit(from);
    UnitCode wanted = numbers.kind().unit(to);
    String shown = numbers.each(text, item -> shown(item, is, wanted));
    if (!shown.equals(text)) {
      into.put(path, shown);
      into.put(TYPED + path, new Typed(from, text, shown).field());
    }
  }

  /**
   * The values meant: where a number is only displayed in other units, the typed text with its
   * unit.
   *
   * @param values values of its fields, hidden ones included
   */
  static Map<String, String> meant(Map<String, String> values) {
    Map<String, String> meant = new HashMap<>(values);
    Map<String, Numbers> numbers = numbers();
    values.forEach(
        (name, field) -> {
          if (name.startsWith(TYPED)) {
            meant.remove(name);
            String path = name.substring(TYPED.length());
            Numbers kind = numbers.get(pattern(path));
            Typed typed = Typed.of(field);
            if (kind != null
                && typed != null
                && typed.shown().equals(values.getOrDefault(path, "").strip())) {
              String unit = kind.kind().unit(typed.units()).code();
              meant.put(path, kind.each(typed.text(), item -> item + " " + unit));
            }
          }
        });
    return meant;
  }

  /** The hidden fields of a form. */
  static Map<String, String> hidden(Map<String, String> values) {
    Map<String, String> hidden = new HashMap<>(values);
    hidden.keySet().removeIf(name -> !name.startsWith(TYPED));
    return hidden;
  }

  private record Typed(UnitSystem units, String text, String shown) {

    static @Nullable Typed of(@Nullable String field) {
      String[] parts = field == null ? new String[0] : field.split("\\|", -1);
      if (parts.length != 3) {
        return null;
      }
      boolean inch = parts[0].equals(UnitSystem.INCH.words());
      return new Typed(inch ? UnitSystem.INCH : UnitSystem.METRIC, parts[1], parts[2]);
    }

    String field() {
      return String.join(SEPARATOR, units.words(), text, shown);
    }
  }

  private interface ItemChange {
    String of(String item);
  }

  /** The quantity of a field, and whether it is a list. */
  private record Numbers(QuantityKind kind, boolean list) {

    String each(String text, ItemChange change) {
      if (!list) {
        return change.of(text);
      }
      List<String> items = new ArrayList<>();
      for (String item : text.split(",", -1)) {
        items.add(change.of(item.strip()));
      }
      return String.join(", ", items);
    }
  }

  private static String shown(String text, UnitCode from, UnitCode to) {
    if (from == to) {
      return text;
    }
    try {
      WrittenQuantity written = WrittenQuantity.of(text);
      if (written.unit() != null) {
        return text;
      }
      StringBuilder shown = new StringBuilder(shown(written.low(), from, to));
      if (written.high() != null) {
        shown.append(" to ").append(shown(written.high(), from, to));
      }
      if (written.likely() != null) {
        shown.append(" likely ").append(shown(written.likely(), from, to));
      }
      return shown.toString();
    } catch (WrittenQuantity.Unclear unclear) {
      return text;
    }
  }

  private static String shown(BigDecimal number, UnitCode from, UnitCode to) {
    double value = to.fromSi(from.toSi(number.doubleValue()));
    return new BigDecimal(value).round(SHOWN).stripTrailingZeros().toPlainString();
  }

  private static Map<String, Numbers> numbers() {
    Map<String, Numbers> numbers = new HashMap<>();
    for (FieldGuide.Entry entry : FieldGuide.entries(UnitSystem.METRIC)) {
      if (entry.kind() != null) {
        boolean list = entry.sort() == FieldGuide.Sort.QUANTITIES;
        numbers.put(entry.path(), new Numbers(entry.kind(), list));
      }
    }
    return numbers;
  }

  /** The path with a star for each list index. */
  static String pattern(String path) {
    return path.replaceAll("/[0-9]+(?=/|$)", "/*");
  }
}
