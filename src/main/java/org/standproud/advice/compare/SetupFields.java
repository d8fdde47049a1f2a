package org.standproud.advice.compare;

import static org.standproud.setup.units.QuantityKind.FORCE;
import static org.standproud.setup.units.QuantityKind.FREQUENCY;
import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.NUMBER;
import static org.standproud.setup.units.QuantityKind.SPINDLE_SPEED;
import static org.standproud.setup.units.QuantityKind.STIFFNESS;
import static org.standproud.setup.units.QuantityKind.TORQUE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Wording;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.Packing;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import org.standproud.setup.units.QuantityKind;

/** The things in which two set-ups may differ, in the order of the request. */
public final class SetupFields {

  private static final List<Field> FIELDS =
      List.of(
          number("stock.length", "stock length", LENGTH, s -> s.stock().lengthM()),
          number("stock.thickness", "stock thickness", LENGTH, s -> s.stock().thicknessM()),
          number("stock.height", "stock height", LENGTH, s -> s.stock().heightM()),
          text("stock.material", "material", s -> s.stock().material().name()),
          text("stock.surface", "gripped faces", s -> s.stock().surface()),
          number("stock.highSpot", "high spot", LENGTH, s -> s.stock().highSpotM()),
          text("stock.deburred", "deburred", s -> s.stock().deburred()),
          text("hold.vise", "vise", s -> s.hold().vise().name()),
          number("hold.gripDepth", "grip depth", LENGTH, s -> s.hold().gripDepthM()),
          number("hold.clampingForce", "clamping force", FORCE, s -> s.hold().clampingForceN()),
          number("hold.handleTorque", "handle torque", TORQUE, s -> s.hold().handleTorqueNm()),
          text("hold.faces", "what is on the gripped faces", s -> s.hold().faces()),
          number("hold.jawFriction", "jaw friction", NUMBER, s -> s.hold().jawFriction()),
          text("hold.packing", "packing", s -> s.hold().packing()),
          text("hold.seat", "seat", s -> s.hold().seat()),
          text("hold.stop", "stop", s -> s.hold().stop()),
          number("hold.stopHeight", "stop height", LENGTH, s -> s.hold().stopHeightM()),
          text("hold.clamps", "clamps", s -> s.hold().clamps()),
          number("hold.viseRunOut", "vise run-out", LENGTH, s -> s.hold().viseRunOutM()),
          number(
              "hold.measuredNote", "measured note", FREQUENCY, s -> s.hold().measured().noteHz()),
          number(
              "hold.measuredDamping",
              "measured damping",
              NUMBER,
              s -> s.hold().measured().dampingRatio()),
          number(
              "hold.measuredStiffness",
              "measured stiffness",
              STIFFNESS,
              s -> s.hold().measured().stiffnessNPerM()),
          text("machine", "machine", s -> s.machine().name()),
          text("cutter", "cutter", s -> s.cutter().name()),
          number("cutter.diameter", "cutter diameter", LENGTH, s -> s.cutter().diameterM()),
          number("cutter.teeth", "teeth", NUMBER, s -> (double) s.cutter().teeth()),
          text("cutter.edge", "edges", s -> s.cutter().edge()),
          number("cutter.runOut", "cutter run-out", LENGTH, s -> s.cutter().runOutM()),
          text("cut.operation", "operation", s -> s.cut().operation()),
          text("cut.stage", "stage", s -> s.cut().stage()),
          number("cut.axialDepth", "axial depth", LENGTH, s -> s.cut().axialDepthM()),
          number("cut.offset", "cutter offset", LENGTH, s -> s.cut().offsetM()),
          text("cut.feed", "feed direction", s -> s.cut().feed()),
          number(
              "cut.spindleSpeed",
              "spindle speed",
              SPINDLE_SPEED,
              s -> s.cut().spindleSpeedRevPerS()),
          number("cut.feedPerTooth", "feed per tooth", LENGTH, s -> s.cut().feedPerToothM()),
          text("cut.feedDrive", "feed drive", s -> s.cut().feedDrive()),
          text("cut.slideLocked", "X slide snugged", s -> s.cut().slideLocked()),
          text("cut.otherSlidesLocked", "other slides locked", s -> s.cut().otherSlidesLocked()),
          number("cut.leadIn", "lead-in", LENGTH, s -> s.cut().leadInM()),
          text("passes", "planned passes", Setup::passes));

  private SetupFields() {}

  private record Field(
      String path,
      String name,
      @Nullable QuantityKind kind,
      Function<Setup, @Nullable Object> value) {}

  private static Field number(
      String path, String name, QuantityKind kind, Function<Setup, @Nullable Object> value) {
    return new Field(path, name, kind, value);
  }

  private static Field text(String path, String name, Function<Setup, @Nullable Object> value) {
    return new Field(path, name, null, value);
  }

  /**
   * What differs between two set-ups, in the units of the first.
   *
   * @param before the one
   * @param after the other
   */
  public static List<FieldChange> changes(Setup before, Setup after) {
    ValueWording values = new ValueWording(before.units());
    List<FieldChange> changes = new ArrayList<>();
    for (Field field : FIELDS) {
      Object from = field.value.apply(before);
      Object to = field.value.apply(after);
      if (!Objects.equals(from, to)) {
        changes.add(
            new FieldChange(
                field.path,
                values.quantity(field, from),
                values.quantity(field, to),
                field.name + " " + values.words(field, from) + " to " + values.words(field, to)));
      }
    }
    return changes;
  }

  /** Values in the units of one caller. */
  private static final class ValueWording {
    private final Wording wording;

    ValueWording(UnitSystem units) {
      this.wording = new Wording(units);
    }

    Quantity quantity(Field field, @Nullable Object value) {
      if (value != null && field.kind != null) {
        return wording.quantity(field.name, field.kind, band(value));
      }
      Object shown = value == null || value instanceof Boolean ? value : words(field, value);
      return new Quantity(field.name, shown, null, null, null, value == null ? field.name : null);
    }

    String words(Field field, @Nullable Object value) {
      if (value == null) {
        return "not known";
      } else if (field.kind != null) {
        return wording.words(field.kind, band(value));
      } else if (value instanceof Boolean yes) {
        return yes ? "yes" : "no";
      } else if (value instanceof Worded word) {
        return word.words();
      } else if (value instanceof List<?> items) {
        return list(items);
      }
      return value.toString();
    }

    /** Joins items; equal neighbours are written once, with their count. */
    private String list(List<?> items) {
      List<String> parts = new ArrayList<>();
      int alike = 0;
      for (int i = 0; i < items.size(); i++) {
        String one = item(items.get(i));
        alike++;
        if (i == items.size() - 1 || !item(items.get(i + 1)).equals(one)) {
          parts.add(alike == 1 ? one : alike + " times " + one);
          alike = 0;
        }
      }
      return parts.isEmpty() ? "none" : String.join(" and ", parts);
    }

    private String item(Object item) {
      if (item instanceof PlannedCut pass) {
        return pass(pass);
      }
      return item instanceof Clamp clamp ? clamp(clamp) : packing((Packing) item);
    }

    private String clamp(Clamp clamp) {
      return wording.words(LENGTH, clamp.heightM()) + " high beside the " + clamp.side().words();
    }

    private String pass(PlannedCut pass) {
      String aside =
          pass.radialDepthM() == null
              ? ""
              : " by " + wording.words(LENGTH, pass.radialDepthM()) + " wide";
      return pass.stage().words() + " " + wording.words(LENGTH, pass.axialDepthM()) + aside;
    }

    private String packing(Packing piece) {
      return piece.material().words()
          + " "
          + piece.kind().words()
          + " of "
          + wording.words(LENGTH, piece.sizeM())
          + " on the "
          + piece.side().words()
          + ", its middle "
          + wording.words(LENGTH, piece.depthM())
          + " below the jaw top";
    }

    private static Band band(Object value) {
      return value instanceof Band band ? band : Band.exactly(((Number) value).doubleValue());
    }
  }
}
