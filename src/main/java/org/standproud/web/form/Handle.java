package org.standproud.web.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standproud.setup.JawSide;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldGuide.Sort;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.units.QuantityKind;
import org.standproud.setup.units.UnitCode;
import org.standproud.setup.units.UnitSpelling;
import tools.jackson.databind.JsonNode;

/**
 * A length that buttons change in steps, or that is dragged in a drawing.
 *
 * @param path path of the field in the form
 * @param name its message key
 * @param number its number among handles of its kind, from 1; 0 if there is only one
 * @param part the part of the drawing that it moves
 * @param along whether a larger value moves the part in the positive direction, or down
 * @param value its value in the form
 * @param step a step, in the length unit of the form
 * @param unit the length unit of the form
 */
public record Handle(
    String path,
    String name,
    int number,
    String part,
    boolean along,
    String value,
    BigDecimal step,
    UnitCode unit) {

  private static final String PACKING = at(HoldFields.PACKING);
  private static final String CUT = at(RequestFields.CUT) + "/";
  private static final String PASSES = at(RequestFields.PASSES);
  private static final MathContext NINE = new MathContext(9);

  private static String at(Field<?, ?> field) {
    return FieldPointer.to(field).text();
  }

  private static String name(Field<?, ?> field) {
    return field.name();
  }

  /** The handles of a form: a length has one once it is entered. */
  static List<Handle> of(Map<String, String> values, UnitSystem units) {
    boolean inch = units == UnitSystem.INCH;
    String coarse = inch ? "0.05" : "1";
    String fine = inch ? "0.005" : "0.1";
    FormValues form = new FormValues(values, QuantityKind.LENGTH.unit(units));
    List<Handle> handles = new ArrayList<>();
    handles.add(across(form, coarse, fine));
    handles.add(form.of(at(CutFields.AXIAL_DEPTH), "axialDepth", 0, "depth", true, fine));
    handles.add(form.of(at(HoldFields.GRIP_DEPTH), "gripDepth", 0, "stock", true, coarse));
    for (int i = 0; i < FormReading.items(PACKING, values); i++) {
      String path = PACKING + "/" + i + "/" + name(HoldFields.DEPTH);
      handles.add(form.of(path, "packing", i + 1, "packing", true, coarse));
    }
    handles.removeIf(handle -> handle.value.isEmpty());
    return List.copyOf(handles);
  }

  /** A broad side may give the overlap of the cutter instead of the position of its axis. */
  private static Handle across(FormValues form, String coarse, String fine) {
    String depth = at(CutFields.RADIAL_DEPTH);
    if (form.isSet(depth)) {
      String side = form.values.getOrDefault(at(CutFields.SIDE), "");
      boolean toward = !side.equals(JawSide.FIXED.words());
      return form.of(depth, "radialDepth", 0, "cutter", toward, fine);
    }
    return form.of(at(CutFields.OFFSET), "offset", 0, "cutter", true, coarse);
  }

  private record FormValues(Map<String, String> values, UnitCode unit) {

    boolean isSet(String path) {
      return !values.getOrDefault(path, "").isBlank();
    }

    Handle of(String path, String name, int number, String part, boolean along, String step) {
      String value = values.getOrDefault(path, "").strip();
      return new Handle(path, name, number, part, along, value, new BigDecimal(step), unit);
    }
  }

  /** Its id in the page. */
  public String id() {
    return "move" + path.replace('/', '-');
  }

  /** Its value in the form, with its unit. */
  public String shown() {
    return TypedValue.node(value, Sort.QUANTITY).isNumber() ? value + " " + unit.code() : value;
  }

  /** A step with its unit. */
  public String stepShown() {
    return step.toPlainString() + " " + unit.code();
  }

  /**
   * Steps of one handle.
   *
   * @param path the field
   * @param steps number of steps; negative for down
   */
  record Steps(String path, int steps) {

    private static final Pattern PRESSED = Pattern.compile("(\\S+) ([-+])([0-9]{0,4})");

    /** Parses a path, a space, a sign and a count; the default is one. */
    static Steps of(String pressed) {
      Matcher matcher = PRESSED.matcher(pressed);
      if (!matcher.matches()) {
        return new Steps(pressed, 0);
      }
      int many = matcher.group(3).isEmpty() ? 1 : Integer.parseInt(matcher.group(3));
      return new Steps(matcher.group(1), matcher.group(2).equals("-") ? -many : many);
    }
  }

  /**
   * The form values after button presses.
   *
   * @param values the current values
   * @param units the units of the form
   * @param pressed the steps
   */
  static Map<String, String> stepped(Map<String, String> values, UnitSystem units, Steps pressed) {
    return changed(
        values, units, pressed.path(), handle -> handle.moved(handle.value, pressed.steps()));
  }

  /**
   * The form values after a part of the drawing was dragged.
   *
   * @param values the current values
   * @param units the units of the form
   * @param dragged the part dragged, and how far
   */
  static Map<String, String> dragged(
      Map<String, String> values, UnitSystem units, Dragged dragged) {
    return changed(
        values,
        units,
        dragged.path(),
        handle -> handle.moved(dragged.from().strip(), handle.steps(dragged.byM())));
  }

  /**
   * A part of the drawing being dragged.
   *
   * @param path the field
   * @param from value of the field before
   * @param byM total distance in m
   */
  record Dragged(String path, String from, double byM) {}

  private static Map<String, String> changed(
      Map<String, String> values, UnitSystem units, String path, Function<Handle, String> change) {
    Map<String, String> after = new HashMap<>(values);
    of(values, units).stream()
        .filter(handle -> handle.path.equals(path))
        .forEach(handle -> after.put(path, change.apply(handle)));
    movePlanned(values, path, after);
    return after;
  }

  /**
   * In a plan, the pass that is the cut moves with it: the first of its stage with the same depth.
   */
  private static void movePlanned(
      Map<String, String> values, String path, Map<String, String> after) {
    String stage = values.getOrDefault(at(CutFields.STAGE), "");
    String was = values.getOrDefault(path, "");
    for (int i = 0; path.startsWith(CUT) && i < FormReading.items(PASSES, values); i++) {
      String pass = PASSES + "/" + i + "/";
      String planned = pass + path.substring(CUT.length());
      if (stage.equals(values.get(pass + "stage")) && was.equals(values.get(planned))) {
        after.put(planned, after.getOrDefault(path, ""));
        return;
      }
    }
  }

  /** Whether a field may have changed with another: the same field of a planned pass. */
  static boolean goesWith(String field, String moved) {
    return moved.startsWith(CUT)
        && field.startsWith(PASSES)
        && field.endsWith("/" + moved.substring(CUT.length()));
  }

  /** Steps keep the typed unit; anything but a single number is left as it is. */
  private String moved(String from, int steps) {
    if (from.isEmpty()) {
      return from;
    }
    JsonNode typed = TypedValue.node(from, Sort.QUANTITY);
    BigDecimal by = step.multiply(BigDecimal.valueOf(steps));
    if (typed.isNumber()) {
      return plain(typed.decimalValue().add(by));
    }
    JsonNode number = typed.get("value");
    return UnitSpelling.of(typed.path("unit").asString(""), unit.dimension())
        .filter(own -> number != null && own.dimension() == unit.dimension())
        .map(own -> plain(number.decimalValue().add(in(own, by))) + " " + own.code())
        .orElse(from);
  }

  private int steps(double byM) {
    return (int) Math.rint(unit.fromSi(byM) / step.doubleValue());
  }

  private BigDecimal in(UnitCode own, BigDecimal by) {
    return BigDecimal.valueOf(own.fromSi(unit.toSi(by.doubleValue()))).round(NINE);
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
