package org.standproud.web.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.reading.CatalogueShelf;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The catalogue as the form picks from it.
 *
 * @param items the items described in full, by the name of the field and the name of the item
 */
record Shelves(Map<String, Map<String, ObjectNode>> items) {

  static Shelves of(Catalogue catalogue, UnitSystem units) {
    return new Shelves(
        Map.of(
            "machine", CatalogueShelf.MACHINES.items(catalogue, units),
            "vise", CatalogueShelf.VISES.items(catalogue, units),
            "cutter", CatalogueShelf.CUTTERS.items(catalogue, units),
            "material", CatalogueShelf.MATERIALS.items(catalogue, units)));
  }

  /** The names on the shelf of a field. */
  List<String> names(String field) {
    return List.copyOf(items.getOrDefault(field, Map.of()).keySet());
  }

  /**
   * Says in a request that describes everything in full only what differs from the catalogue.
   *
   * @param request the request, in the units of these shelves; changed
   */
  void shorten(ObjectNode request) {
    for (String name : List.copyOf(request.propertyNames())) {
      JsonNode there = request.get(name);
      if (there instanceof ObjectNode part) {
        shorten(part);
        ObjectNode item = item(name, part);
        if (item != null) {
          keepWhatDiffers(part, item);
          if (part.size() == 1) {
            request.put(name, part.get("name").asString());
          }
        }
      }
    }
  }

  private @Nullable ObjectNode item(String field, ObjectNode part) {
    JsonNode name = part.get("name");
    return name == null ? null : items.getOrDefault(field, Map.of()).get(name.asString());
  }

  private static void keepWhatDiffers(ObjectNode part, ObjectNode item) {
    List<String> same = new ArrayList<>();
    for (String field : part.propertyNames()) {
      JsonNode mine = part.get(field);
      JsonNode shelved = item.get(field);
      boolean bothUnknown = shelved == null && mine.isNull();
      if (!field.equals("name") && (bothUnknown || mine.equals(shelved))) {
        same.add(field);
      }
    }
    part.remove(same);
  }
}
