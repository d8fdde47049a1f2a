package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/** Every field of a request with what may stand there, for documentation. */
public final class FieldGuide {

  /** What is asked first, in the order in which a set-up is made; the rest may wait. */
  private static final Map<Step, List<String>> FIRST =
      Map.of(
          Step.STOCK,
          pointers(
              StockFields.LENGTH_X,
              StockFields.THICKNESS,
              StockFields.HEIGHT,
              StockFields.MATERIAL),
          Step.HOLD,
          pointers(
              HoldFields.VISE,
              HoldFields.GRIP_DEPTH,
              HoldFields.CLAMPING_FORCE,
              HoldFields.HANDLE_TORQUE),
          Step.CUTTER,
          pointers(RequestFields.MACHINE, RequestFields.CUTTER),
          Step.CUT,
          pointers(
              CutFields.OPERATION,
              CutFields.SIDE,
              CutFields.RADIAL_DEPTH,
              CutFields.AXIAL_DEPTH,
              CutFields.FEED));

  private static List<String> pointers(Field<?, ?>... fields) {
    return Arrays.stream(fields).map(field -> FieldPointer.to(field).text()).toList();
  }

  private FieldGuide() {}

  /** The questions of a set-up in the order in which a machinist thinks of them. */
  public enum Step {
    /** What is milled. */
    STOCK,
    /** How it is held. */
    HOLD,
    /** On which machine and with which cutter. */
    CUTTER,
    /** How it is cut. */
    CUT
  }

  /** What can be written in a field. */
  public enum Sort {
    /** A number in the caller's unit, or an object with value and unit. */
    QUANTITY,
    /** A quantity, or a band of it with low and high. */
    BAND,
    /** A list of quantities. */
    QUANTITIES,
    /** A whole number. */
    COUNT,
    /** A list of whole numbers. */
    COUNTS,
    /** One of a list of words. */
    CHOICE,
    /** True or false. */
    YES_NO,
    /** A line of text. */
    TEXT,
    /** An object. */
    PART,
    /** An object, or the name of one in the catalogue. */
    SHELVED_PART,
    /** A list of objects. */
    PARTS,
    /** A list of objects, each given or named in the catalogue. */
    SHELVED_PARTS
  }

  /**
   * One field.
   *
   * @param path where it stands, as a JSON Pointer; {@code *} stands for an item of a list
   * @param meaning what it means
   * @param required whether it has to be given
   * @param allowed what may stand there
   * @param sort what sort of thing may stand there
   * @param kind what its numbers measure; null if it takes none or only whole numbers
   * @param first the step at which it is asked at the start; null if it may wait
   */
  public record Entry(
      String path,
      String meaning,
      boolean required,
      String allowed,
      Sort sort,
      @Nullable QuantityKind kind,
      @Nullable Step first) {}

  /** What stands in a request for a value that is not known, as null does. */
  public static final String UNKNOWN = Field.UNKNOWN;

  /** The paths of what is asked first, in order. */
  public static List<String> first(Step step) {
    return FIRST.getOrDefault(step, List.of());
  }

  /**
   * All fields, each before the fields inside it.
   *
   * @param units the system in which ranges are given
   */
  public static List<Entry> entries(UnitSystem units) {
    return entries(RequestFields.SHAPE, units);
  }

  /**
   * All fields of a job, each before the fields inside it.
   *
   * @param units the system in which ranges are given
   */
  public static List<Entry> jobEntries(UnitSystem units) {
    return entries(JobFields.SHAPE, units);
  }

  static List<Entry> entries(ObjectSchema<?> shape, UnitSystem units) {
    List<Entry> entries = new ArrayList<>();
    walk("", shape, units, entries);
    return entries;
  }

  private static void walk(
      String above, ObjectSchema<?> shape, UnitSystem units, List<Entry> into) {
    for (Field<?, ?> field : shape.fields()) {
      String path = above + "/" + field.name();
      into.add(
          new Entry(
              path,
              field.meaning(),
              field.required(),
              field.allowed(units),
              sort(field),
              kind(field),
              step(path)));
      if (field instanceof ObjectField<?, ?> part) {
        walk(path, part.shape(), units, into);
      } else if (field instanceof ListField<?, ?> parts) {
        walk(path + "/*", parts.shape(), units, into);
      } else if (field instanceof ItemList<?, ?> items) {
        walk(path + "/*", items.item().shape(), units, into);
      }
    }
  }

  private static @Nullable Step step(String path) {
    for (Step step : Step.values()) {
      if (first(step).contains(path)) {
        return step;
      }
    }
    return null;
  }

  static @Nullable QuantityKind kind(Field<?, ?> field) {
    if (field instanceof Quantity<?> quantity) {
      return quantity.range().kind();
    } else if (field instanceof BandField<?> banded) {
      return banded.range().kind();
    }
    return field instanceof Quantities<?> quantities ? quantities.range().kind() : null;
  }

  private static Sort sort(Field<?, ?> field) {
    if (field instanceof Quantity) {
      return Sort.QUANTITY;
    } else if (field instanceof BandField) {
      return Sort.BAND;
    } else if (field instanceof Quantities) {
      return Sort.QUANTITIES;
    } else if (field instanceof Count) {
      return Sort.COUNT;
    } else if (field instanceof Counts) {
      return Sort.COUNTS;
    } else if (field instanceof Choice) {
      return Sort.CHOICE;
    } else if (field instanceof BooleanField) {
      return Sort.YES_NO;
    } else if (field instanceof ObjectField<?, ?> part) {
      return part.shelf() == null ? Sort.PART : Sort.SHELVED_PART;
    }
    if (field instanceof ItemList) {
      return Sort.SHELVED_PARTS;
    }
    return field instanceof ListField ? Sort.PARTS : Sort.TEXT;
  }
}
