package org.standproud.advice.everyday;

import java.util.Map;
import org.standproud.advice.DemoShop;
import org.standproud.setup.Setup;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A set-up in short: a row of the table, or one drawn at random. Numbers are in the units of the
 * row; an empty field is one that was not given.
 *
 * @param fields the fields by column
 */
record EverydaySetup(Map<String, String> fields) {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  /** Copies the map. */
  EverydaySetup {
    fields = Map.copyOf(fields);
  }

  String id() {
    return get("id");
  }

  String why() {
    return get("why");
  }

  MachinistVerdict machinist() {
    return MachinistVerdict.of(get("verdict"));
  }

  /** Stock, hold and cut in one line. */
  String inShort() {
    String unit = get("units").equals("inch") ? " in" : " mm";
    String way = get("face").equals("top") ? get("way") : get("face") + " side, " + get("way");
    return get("length")
        + " x "
        + get("thickness")
        + " x "
        + get("height")
        + unit
        + " "
        + get("material")
        + ", grip "
        + get("grip")
        + ", "
        + get("cutter")
        + ", "
        + get("axial")
        + " deep, "
        + way;
  }

  /**
   * The set-up as the service reads it.
   *
   * @throws IllegalStateException if the service refuses the request
   */
  Setup setup() {
    Reading reading = new SetupReader(DemoShop.CATALOGUE).read(request());
    if (reading instanceof Reading.Accepted accepted) {
      return accepted.setup();
    }
    throw new IllegalStateException(fields + " " + reading);
  }

  /** The request that a caller would send. */
  ObjectNode request() {
    ObjectNode request = JSON.objectNode();
    request.put("units", get("units"));
    request.putObject("job").put("jobOrder", "everyday " + id());
    request.set("stock", stock());
    request.set("hold", hold());
    request.put("machine", get("machine"));
    if (get("edge").isEmpty()) {
      request.put("cutter", get("cutter"));
    } else {
      request.putObject("cutter").put("name", get("cutter")).put("edge", get("edge"));
    }
    request.set("cut", cut());
    return request;
  }

  private ObjectNode stock() {
    ObjectNode stock = JSON.objectNode();
    number(stock, "length");
    number(stock, "thickness");
    number(stock, "height");
    text(stock, "material");
    text(stock, "surface");
    number(stock, "highSpot");
    yesNo(stock, "deburred", "deburred");
    return stock;
  }

  private ObjectNode hold() {
    ObjectNode hold = JSON.objectNode();
    text(hold, "vise");
    number(hold, "grip", "gripDepth");
    if (!get("clamping").isEmpty()) {
      String[] parts = get("clamping").split("\\.\\.| ");
      hold.putObject(parts[2].equals("N.m") ? "handleTorque" : "clampingForce")
          .put("low", Double.parseDouble(parts[0]))
          .put("high", Double.parseDouble(parts[1]))
          .put("unit", parts[2]);
    }
    packing(hold.putArray("packing"));
    text(hold, "seat");
    String[] stop = get("stop").split("@");
    if (!stop[0].isEmpty()) {
      hold.put("stop", stop[0]);
    }
    if (stop.length > 1) {
      hold.put("stopHeight", Double.parseDouble(stop[1]));
    }
    number(hold, "runOut", "viseRunOut");
    return hold;
  }

  /** Pieces as in {@code movable wire copper 3@8}: side, kind, material, size, depth if local. */
  private void packing(ArrayNode pieces) {
    if (get("packing").isEmpty()) {
      return;
    }
    for (String piece : get("packing").split("; ")) {
      String[] words = piece.split("[ @]");
      ObjectNode node = pieces.addObject();
      node.put("side", words[0] + " jaw").put("kind", words[1]).put("material", words[2]);
      node.put("size", Double.parseDouble(words[3]));
      if (words.length > 4) {
        node.put("depth", Double.parseDouble(words[4]));
      }
    }
  }

  private ObjectNode cut() {
    ObjectNode cut = JSON.objectNode();
    boolean top = get("face").equals("top");
    cut.put("operation", top ? "top edge" : "broad side");
    text(cut, "stage");
    number(cut, "axial", "axialDepth");
    if (top) {
      number(cut, "across", "offset");
      text(cut, "way", "feed");
    } else {
      cut.put("side", get("face") + " jaw");
      number(cut, "across", "radialDepth");
      text(cut, "way", "mode");
    }
    cut.put("spindleSpeed", Double.parseDouble(get("speed")));
    number(cut, "feedPerTooth");
    text(cut, "drive", "feedDrive");
    yesNo(cut, "drag", "slideLocked");
    yesNo(cut, "others", "otherSlidesLocked");
    return cut;
  }

  private void number(ObjectNode into, String column) {
    number(into, column, column);
  }

  private void number(ObjectNode into, String column, String field) {
    if (!get(column).isEmpty()) {
      into.put(field, Double.parseDouble(get(column)));
    }
  }

  private void text(ObjectNode into, String column) {
    text(into, column, column);
  }

  private void text(ObjectNode into, String column, String field) {
    if (!get(column).isEmpty()) {
      into.put(field, get(column));
    }
  }

  private void yesNo(ObjectNode into, String column, String field) {
    if (!get(column).isEmpty()) {
      into.put(field, get(column).equals("yes"));
    }
  }

  String get(String column) {
    return fields.getOrDefault(column, "");
  }
}
