package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Setup;
import org.standproud.setup.units.QuantityKind;

/**
 * One field of the request in which two set-ups differ. Where another machine, vise, cutter or
 * material of the catalogue takes the place of one, that is one difference; where only fields of
 * the same item differ, each is one.
 *
 * @param at where it stands
 * @param label its short name in the trade
 * @param kind what its numbers measure; null if it has none
 * @param before the value in the one, in SI as the model keeps it; null if not known there
 * @param after the value in the other
 */
public record FieldDifference(
    FieldPointer at,
    String label,
    @Nullable QuantityKind kind,
    @Nullable Object before,
    @Nullable Object after) {

  /**
   * Every difference, in the order of the request. What a request may state in two ways is compared
   * in the one way in which the model keeps it; its note is not kept.
   *
   * @param before the one
   * @param after the other
   */
  public static List<FieldDifference> between(Setup before, Setup after) {
    List<FieldDifference> differences = new ArrayList<>();
    compare("", "", RequestFields.SHAPE, before, after, differences);
    return differences;
  }

  private static <O> void compare(
      String above,
      String prefix,
      ObjectSchema<O> shape,
      O before,
      O after,
      List<FieldDifference> into) {
    for (Field<O, ?> field : shape.fields()) {
      compareField(above, prefix, field, before, after, into);
    }
  }

  private static <O> void compareField(
      String above,
      String prefix,
      Field<O, ?> field,
      O before,
      O after,
      List<FieldDifference> into) {
    ObjectField<O, ?> part = field.part();
    if (part != null) {
      comparePart(above, prefix, part, before, after, into);
      return;
    }
    Object from = field.kept(before);
    Object to = field.kept(after);
    if (!Objects.equals(from, to)) {
      String label = field.title() == null ? prefix + field.label() : field.label();
      FieldPointer at = FieldPointer.at(above + "/" + field.name());
      into.add(new FieldDifference(at, label, kind(field), from, to));
    }
  }

  private static <O, P> void comparePart(
      String above,
      String prefix,
      ObjectField<O, P> part,
      O before,
      O after,
      List<FieldDifference> into) {
    P from = part.getter().apply(before);
    P to = part.getter().apply(after);
    String here = above + "/" + part.name();
    String within = part.isNamed() || !prefix.isEmpty() ? prefix + part.label() + " " : "";
    String name = part.itemName(from);
    if (Objects.equals(name, part.itemName(to))) {
      compare(here, within, part.shape(), from, to, into);
    } else {
      into.add(
          new FieldDifference(
              FieldPointer.at(here), prefix + part.label(), null, name, part.itemName(to)));
      part.shown().forEach(field -> compareField(here, within, field, from, to, into));
    }
  }

  private static @Nullable QuantityKind kind(Field<?, ?> field) {
    return field instanceof Count || field instanceof Counts
        ? QuantityKind.NUMBER
        : FieldGuide.kind(field);
  }
}
