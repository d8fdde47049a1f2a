package org.standproud.web.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CanonicalText;
import org.standproud.setup.request.CatalogueShelf;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The catalogue choices of the form.
 *
 * @param items the items described in full, by the name of the field and the name of the item
 */
public record Shelves(Map<String, Map<String, ObjectNode>> items) {

  /** Copies the map. */
  public Shelves {
    items = Map.copyOf(items);
  }

  /** The catalogue in the units of a form. */
  static Shelves of(Catalogue catalogue, UnitSystem units) {
    return new Shelves(
        Map.of(
            "machine", CatalogueShelf.MACHINES.items(catalogue, units),
            "vise", CatalogueShelf.VISES.items(catalogue, units),
            "cutter", CatalogueShelf.CUTTERS.items(catalogue, units),
            "material", CatalogueShelf.MATERIALS.items(catalogue, units)));
  }

  /** The item names of a field. */
  List<String> names(String field) {
    return List.copyOf(items.getOrDefault(field, Map.of()).keySet());
  }

  /**
   * A set-up as form values: only what differs from the catalogue.
   *
   * @param setup the set-up
   * @param catalogue the catalogue
   * @param units the units to write it in
   */
  public static ObjectNode request(Setup setup, Catalogue catalogue, UnitSystem units) {
    ObjectNode request = CanonicalText.request(setup, units);
    of(catalogue, units).shorten(request);
    return request;
  }

  /** Removes what equals the catalogue from a request that describes everything in full. */
  private void shorten(ObjectNode request) {
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
