package org.standproud.setup.reading;

import java.util.LinkedHashMap;
import java.util.Map;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.node.ObjectNode;

/** Items of a catalogue as they would be described in full in a request. */
public final class CatalogueText {

  private CatalogueText() {}

  /**
   * The machines by name.
   *
   * @param catalogue the catalogue
   * @param units the units of their numbers
   */
  public static Map<String, ObjectNode> machines(Catalogue catalogue, UnitSystem units) {
    return written(MachineFields.SHAPE, catalogue.machines(), units);
  }

  /**
   * The vises by name.
   *
   * @param catalogue the catalogue
   * @param units the units of their numbers
   */
  public static Map<String, ObjectNode> vises(Catalogue catalogue, UnitSystem units) {
    return written(ViseFields.SHAPE, catalogue.vises(), units);
  }

  /**
   * The cutters by name.
   *
   * @param catalogue the catalogue
   * @param units the units of their numbers
   */
  public static Map<String, ObjectNode> cutters(Catalogue catalogue, UnitSystem units) {
    return written(CutterFields.SHAPE, catalogue.cutters(), units);
  }

  /**
   * The materials by name.
   *
   * @param catalogue the catalogue
   * @param units the units of their numbers
   */
  public static Map<String, ObjectNode> materials(Catalogue catalogue, UnitSystem units) {
    return written(MaterialFields.SHAPE, catalogue.materials(), units);
  }

  private static <P> Map<String, ObjectNode> written(
      Shape<P> shape, Map<String, P> items, UnitSystem units) {
    Map<String, ObjectNode> texts = new LinkedHashMap<>();
    items.forEach((name, item) -> texts.put(name, shape.write(shape.of(item), units)));
    return texts;
  }
}
