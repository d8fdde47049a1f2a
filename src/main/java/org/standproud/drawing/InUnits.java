package org.standproud.drawing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.units.QuantityKind;

/**
 * Values in the units of the reader, for the axes of a chart.
 *
 * @param units the units of the reader
 */
record InUnits(UnitSystem units) {

  double of(QuantityKind kind, double si) {
    return kind.unit(units).fromSi(si);
  }

  <T> List<Double> all(QuantityKind kind, List<T> points, ToDoubleFunction<T> si) {
    return points.stream().map(point -> of(kind, si.applyAsDouble(point))).toList();
  }

  String unit(QuantityKind kind) {
    return Figures.sign(kind.unit(units));
  }
}
