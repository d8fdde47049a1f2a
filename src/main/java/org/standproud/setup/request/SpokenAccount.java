package org.standproud.setup.request;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import org.standproud.setup.units.UnitCode;

/** What was taken for the words of a shop, to be shown with the answer. */
public final class SpokenAccount {

  private static final MathContext READ = new MathContext(3);

  private final UnitSystem units;
  private final List<String> lines = new ArrayList<>();

  private SpokenAccount(UnitSystem units) {
    this.units = units;
  }

  /**
   * A line for each thing that was given in words.
   *
   * @param setup the set-up, which keeps what was taken
   * @return perhaps none; in the units of the set-up
   */
  public static List<String> taken(Setup setup) {
    SpokenAccount account = new SpokenAccount(setup.units());
    Hold hold = setup.hold();
    account.item(StockFields.MATERIAL, CatalogueSection.MATERIALS, setup.stock().material());
    account.item(HoldFields.VISE, CatalogueSection.VISES, hold.vise());
    account.item(RequestFields.MACHINE, CatalogueSection.MACHINES, setup.machine());
    account.item(RequestFields.CUTTER, CatalogueSection.CUTTERS, setup.cutter());
    account.pull(hold);
    return List.copyOf(account.lines);
  }

  private <P> void item(Field<?, ?> where, CatalogueSection<P> kind, P item) {
    Values values = kind.shape().of(item);
    String name = values.need(kind.name());
    if (name.endsWith(SpokenItems.TYPICAL)) {
      List<String> taken = new ArrayList<>();
      describe(kind.shape(), values, taken);
      lines.add(
          FieldPointer.to(where)
              + ": "
              + name
              + " is not of the catalogue; taken as "
              + String.join(", ", taken));
    }
  }

  private void pull(Hold hold) {
    Band torque = hold.handleTorqueNm();
    if (hold.effort() != null && torque != null) {
      lines.add(
          FieldPointer.to(HoldFields.CLAMPING)
              + ": "
              + hold.effort().words()
              + ", taken as "
              + text(HoldFields.HANDLE_TORQUE.range(), torque)
              + " on the screw");
    }
  }

  private <O> void describe(ObjectSchema<O> shape, Values values, List<String> into) {
    for (Field<O, ?> field : shape.fields()) {
      if (field instanceof ObjectField<?, ?> part) {
        Values inner = values.get(part);
        if (inner != null) {
          describe(part.shape(), inner, into);
        }
      } else {
        String value = text(field, values);
        if (value != null) {
          into.add(field.name() + " " + value);
        }
      }
    }
  }

  private <O> @Nullable String text(Field<O, ?> field, Values values) {
    if (field instanceof Quantity<?> quantity) {
      Double value = values.get(quantity);
      return value == null ? null : text(quantity.range(), Band.exactly(value));
    } else if (field instanceof BandField<?> banded) {
      Band band = values.get(banded);
      return band == null ? null : text(banded.range(), band);
    }
    Object value = values.get(field);
    if (value instanceof Worded worded) {
      return worded.words();
    }
    return value instanceof Integer || field == MaterialFields.SOURCE
        ? String.valueOf(value)
        : null;
  }

  private String text(Range range, Band band) {
    UnitCode unit = range.kind().unit(units);
    String low = number(unit.fromSi(band.low()));
    String ends = band.isExact() ? low : low + " to " + number(unit.fromSi(band.high()));
    return unit == UnitCode.ONE ? ends : ends + " " + unit.code();
  }

  private static String number(double value) {
    return new BigDecimal(value).round(READ).stripTrailingZeros().toPlainString();
  }
}
