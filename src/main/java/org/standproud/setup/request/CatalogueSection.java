package org.standproud.setup.request;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.standproud.setup.Cutter;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Vise;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What stands on a shelf.
 *
 * @param <P> the record of an item
 * @param shape its fields
 * @param name the field of its name
 * @param item makes it of what was read
 * @param onShelf the shelf in a catalogue
 */
record CatalogueSection<P>(
    ObjectSchema<P> shape,
    Text<P> name,
    Function<Values, P> item,
    Function<Catalogue, Map<String, P>> onShelf) {

  static final CatalogueSection<Machine> MACHINES =
      new CatalogueSection<>(
          MachineFields.SHAPE, MachineFields.NAME, MachineFields::machine, Catalogue::machines);
  static final CatalogueSection<Vise> VISES =
      new CatalogueSection<>(ViseFields.SHAPE, ViseFields.NAME, ViseFields::vise, Catalogue::vises);
  static final CatalogueSection<Cutter> CUTTERS =
      new CatalogueSection<>(
          CutterFields.SHAPE, CutterFields.NAME, CutterFields::cutter, Catalogue::cutters);
  static final CatalogueSection<Material> MATERIALS =
      new CatalogueSection<>(
          MaterialFields.SHAPE,
          MaterialFields.NAME,
          MaterialFields::material,
          Catalogue::materials);

  List<Problem> problems(JsonNode node) {
    ProblemCollector faults = new ProblemCollector();
    values(node, faults);
    return faults.list();
  }

  Map<String, P> read(Map<String, ObjectNode> texts) {
    Map<String, P> items = new LinkedHashMap<>();
    texts.forEach((itemName, text) -> items.put(itemName, read(text)));
    return items;
  }

  ObjectNode written(JsonNode node, UnitSystem units) {
    return shape.write(shape.of(read(node)), units);
  }

  Map<String, ObjectNode> written(Catalogue catalogue, UnitSystem units) {
    Map<String, ObjectNode> texts = new LinkedHashMap<>();
    onShelf
        .apply(catalogue)
        .forEach((itemName, one) -> texts.put(itemName, shape.write(shape.of(one), units)));
    return texts;
  }

  /**
   * The item of a description in full.
   *
   * @throws IllegalArgumentException if something is wrong with it
   */
  P read(JsonNode node) {
    ProblemCollector faults = new ProblemCollector();
    Values values = values(node, faults);
    if (!faults.none()) {
      throw new IllegalArgumentException(
          shape.name() + " " + node.path(name.name()) + ": " + faults.list().get(0).message());
    }
    return item.apply(values);
  }

  private Values values(JsonNode node, ProblemCollector faults) {
    FieldLocation place = new FieldLocation("", SetupReader.units(node), Catalogue.EMPTY, faults);
    if (!(node instanceof ObjectNode object)) {
      return shape.read(node, place);
    }
    ObjectNode plain = object.deepCopy();
    plain.remove(RequestFields.UNITS.name());
    return shape.read(plain, place);
  }
}
