package org.standproud.setup.request;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Descriptions of one kind of item at several sizes; between two of them every number lies on a
 * straight line, and what is counted or is a word is that of the nearer one.
 */
final class SizedRows {

  private static final double MM = 1e-3;

  /** Room for a size that is a little less than the least or more than the greatest row. */
  private static final double BEYOND = 0.02;

  private final String sizedBy;
  private final List<ObjectNode> rows;

  /**
   * Keeps the rows.
   *
   * @param sizedBy the field that holds the size in mm
   * @param rows the rows by rising size, at least two
   */
  SizedRows(String sizedBy, JsonNode rows) {
    this.sizedBy = sizedBy;
    this.rows = new ArrayList<>();
    rows.forEach(row -> this.rows.add((ObjectNode) row));
  }

  /**
   * The description of one size.
   *
   * @param sizeM the size in m
   * @return null if the size is beyond the rows
   */
  @Nullable ObjectNode at(double sizeM) {
    double size = sizeM / MM;
    if (size < size(0) * (1 - BEYOND) || size > size(rows.size() - 1) * (1 + BEYOND)) {
      return null;
    }
    int above = 1;
    while (above < rows.size() - 1 && size(above) < size) {
      above++;
    }
    double share = (size - size(above - 1)) / (size(above) - size(above - 1));
    ObjectNode item = between(rows.get(above - 1), rows.get(above), share);
    item.put(sizedBy, size);
    return item;
  }

  private double size(int row) {
    return rows.get(row).get(sizedBy).doubleValue();
  }

  private static ObjectNode between(ObjectNode below, ObjectNode above, double share) {
    ObjectNode item = JsonNodeFactory.instance.objectNode();
    for (String name : below.propertyNames()) {
      item.set(name, between(name, below.get(name), above.get(name), share));
    }
    return item;
  }

  private static JsonNode between(String name, JsonNode below, JsonNode above, double share) {
    if (below instanceof ObjectNode low && above instanceof ObjectNode high) {
      return between(low, high, share);
    }
    if (below.isNumber() && above.isNumber() && !name.equals(CutterFields.TEETH.name())) {
      double from = below.doubleValue();
      double value = from + share * (above.doubleValue() - from);
      return JsonNodeFactory.instance.numberNode(value);
    }
    return share < 0.5 ? below : above;
  }
}
