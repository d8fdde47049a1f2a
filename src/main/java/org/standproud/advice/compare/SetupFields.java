package org.standproud.advice.compare;

import static org.standproud.setup.units.QuantityKind.LENGTH;
import static org.standproud.setup.units.QuantityKind.POWER;
import static org.standproud.setup.units.QuantityKind.SPINDLE_SPEED;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;
import org.standproud.advice.Wording;
import org.standproud.setup.Backing;
import org.standproud.setup.Band;
import org.standproud.setup.Clamp;
import org.standproud.setup.Packing;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.PowerPoint;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import org.standproud.setup.request.FieldDifference;
import org.standproud.setup.units.QuantityKind;

/** The things in which two set-ups may differ, in the order of the request. */
public final class SetupFields {

  private SetupFields() {}

  /**
   * What differs between two set-ups, in the units of the first.
   *
   * @param before the one
   * @param after the other
   */
  public static List<FieldChange> changes(Setup before, Setup after) {
    ValueWording values = new ValueWording(before.units());
    List<FieldChange> changes = new ArrayList<>();
    for (FieldDifference field : FieldDifference.between(before, after)) {
      changes.add(
          new FieldChange(
              field.at(),
              values.quantity(field, field.before()),
              values.quantity(field, field.after()),
              field.label() + " " + values.words(field)));
    }
    return changes;
  }

  /** Values in the units of one caller. */
  private static final class ValueWording {
    private final Wording wording;

    ValueWording(UnitSystem units) {
      this.wording = new Wording(units);
    }

    Quantity quantity(FieldDifference field, @Nullable Object value) {
      QuantityKind kind = field.kind();
      if (value != null && kind != null && !(value instanceof List)) {
        return wording.quantity(field.label(), kind, band(value));
      }
      Object shown = value == null || value instanceof Boolean ? value : words(field, value);
      return new Quantity(
          field.label(), shown, null, null, null, value == null ? field.label() : null);
    }

    /** From what to what; in full where items look alike in short. */
    String words(FieldDifference field) {
      String from = words(field, field.before());
      String to = words(field, field.after());
      if (from.equals(to)
          && field.before() instanceof List<?> b
          && field.after() instanceof List<?> a) {
        return list(b, item -> inFull(item, field.kind()))
            + " to "
            + list(a, item -> inFull(item, field.kind()));
      }
      return from + " to " + to;
    }

    private String words(FieldDifference field, @Nullable Object value) {
      if (value == null) {
        return "not known";
      }
      QuantityKind kind = field.kind();
      if (value instanceof List<?> items) {
        return list(items, item -> item(item, kind));
      } else if (kind != null) {
        return wording.words(kind, band(value));
      } else if (value instanceof Boolean yes) {
        return yes ? "yes" : "no";
      } else if (value instanceof Worded word) {
        return word.words();
      }
      return value.toString();
    }

    /** Joins items; equal neighbours are written once, with their count. */
    private String list(List<?> items, Function<Object, String> words) {
      List<String> parts = new ArrayList<>();
      int alike = 0;
      for (int i = 0; i < items.size(); i++) {
        String one = words.apply(items.get(i));
        alike++;
        if (i == items.size() - 1 || !words.apply(items.get(i + 1)).equals(one)) {
          parts.add(alike == 1 ? one : alike + " times " + one);
          alike = 0;
        }
      }
      return parts.isEmpty() ? "none" : String.join(" and ", parts);
    }

    private String item(Object item, @Nullable QuantityKind kind) {
      if (kind != null) {
        return wording.words(kind, band(item));
      } else if (item instanceof PlannedCut pass) {
        return pass(pass);
      } else if (item instanceof PowerPoint point) {
        return wording.words(POWER, point.powerW())
            + " at "
            + wording.words(SPINDLE_SPEED, point.speedRevPerS());
      } else if (item instanceof Backing backing) {
        return backing(backing);
      }
      return item instanceof Clamp clamp ? clamp(clamp) : packing((Packing) item);
    }

    private String inFull(Object item, @Nullable QuantityKind kind) {
      String words = item(item, kind);
      if (item instanceof Clamp clamp) {
        String gap =
            clamp.gapM() == null ? "touching" : wording.words(LENGTH, clamp.gapM()) + " off";
        return words
            + ", "
            + wording.words(LENGTH, clamp.lengthM())
            + " long, "
            + gap
            + ", its middle at "
            + wording.words(LENGTH, clamp.alongM());
      } else if (item instanceof PlannedCut pass) {
        Band feed = pass.feedPerToothM();
        return words + (feed == null ? "" : " at " + wording.words(LENGTH, feed) + " a tooth");
      }
      return words;
    }

    private String backing(Backing backing) {
      return backing.kind().words()
          + " "
          + wording.words(LENGTH, backing.lengthM())
          + " long behind it on the side of the "
          + backing.side().words()
          + ", touching "
          + wording.words(LENGTH, backing.heightM())
          + " above the jaws, its middle at "
          + wording.words(LENGTH, backing.alongM());
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
