package org.standproud.web.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Cutter;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineKind;
import org.standproud.setup.Material;
import org.standproud.setup.Operation;
import org.standproud.setup.Stage;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.Field;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.KnownParts;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.units.QuantityKind;

/**
 * What a draft assumes for fields that are not entered, so that a first answer needs about ten
 * fields. The page shows them as assumed; they are recorded only if the user adopts them.
 */
final class AssumedValues {

  /** The reader requires one; a draft creates no record. */
  static final String NO_JOB = "-";

  private static final String JOB = FieldPointer.to(RequestFields.JOB_ORDER).text();
  private static final MathContext SHOWN = new MathContext(2);

  private final Map<String, String> entered;
  private final KnownParts known;
  private final UnitSystem units;
  private final Map<String, String> assumed = new LinkedHashMap<>();

  private AssumedValues(Map<String, String> entered, KnownParts known, UnitSystem units) {
    this.entered = entered;
    this.known = known;
    this.units = units;
  }

  /**
   * The assumed values by the paths of their fields, in the form's notation.
   *
   * @param entered values in the form
   * @param known what they describe
   * @param units the units of the form
   */
  static Map<String, String> of(Map<String, String> entered, KnownParts known, UnitSystem units) {
    AssumedValues values = new AssumedValues(entered, known, units);
    values.assume();
    return values.assumed;
  }

  private void assume() {
    put(List.of(CutFields.STAGE), Stage.ROUGH.words());
    if (known.operation() == Operation.TOP_EDGE) {
      put(List.of(CutFields.OFFSET, CutFields.SIDE, CutFields.RADIAL_DEPTH), "0");
    }
    Machine machine = known.machine();
    if (machine != null) {
      boolean manual = machine.kind() == MachineKind.MANUAL;
      put(List.of(CutFields.FEED_DRIVE), (manual ? FeedDrive.HAND : FeedDrive.POWER).words());
    }
    Cutter cutter = known.cutter();
    Material material = known.material();
    if (cutter != null && material != null) {
      CuttingRange range = material.rangeFor(cutter.toolMaterial());
      put(
          List.of(CutFields.FEED_PER_TOOTH, CutFields.TABLE),
          number(
              QuantityKind.LENGTH,
              (range.leastFeedPerToothM() + range.greatestFeedPerToothM()) / 2));
      if (machine != null) {
        put(
            List.of(CutFields.SPINDLE, CutFields.CUTTING),
            number(QuantityKind.SPINDLE_SPEED, speed(range, cutter, machine)));
      }
    }
  }

  /** The speed of the nearest spindle step below the middle of the published range, in 1/s. */
  private static double speed(CuttingRange range, Cutter cutter, Machine machine) {
    double cutting = (range.leastSpeedMPerS() + range.greatestSpeedMPerS()) / 2;
    double wanted = cutting / (Math.PI * cutter.diameterM());
    double within =
        Math.max(machine.leastSpeedRevPerS(), Math.min(machine.greatestSpeedRevPerS(), wanted));
    return machine.speedsRevPerS().stream()
        .filter(step -> step <= within)
        .reduce((first, second) -> second)
        .orElse(within);
  }

  private void put(List<Field<?, ?>> fields, String value) {
    List<String> paths = fields.stream().map(field -> FieldPointer.to(field).text()).toList();
    if (paths.stream().allMatch(path -> entered.getOrDefault(path, "").isBlank())) {
      assumed.put(paths.get(0), value);
    }
  }

  private String number(QuantityKind kind, double si) {
    BigDecimal shown = new BigDecimal(kind.unit(units).fromSi(si));
    MathContext figures = kind == QuantityKind.SPINDLE_SPEED ? new MathContext(4) : SHOWN;
    return shown.round(figures).stripTrailingZeros().toPlainString();
  }

  /** The form with a job if it has none, for a draft, which is not recorded. */
  static Map<String, String> withJob(Map<String, String> values) {
    @Nullable String job = values.get(JOB);
    if (job != null && !job.isBlank()) {
      return values;
    }
    Map<String, String> with = new LinkedHashMap<>(values);
    with.put(JOB, NO_JOB);
    return with;
  }
}
