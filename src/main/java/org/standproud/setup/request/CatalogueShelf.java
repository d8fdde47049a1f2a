package org.standproud.setup.request;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import org.standproud.setup.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A shelf of the catalogue. An item is written as a request would describe it in full, with a field
 * {@link #UNITS} that names the units of its plain numbers.
 */
public enum CatalogueShelf implements Worded {
  /** The machines. */
  MACHINES(CatalogueSection.MACHINES),
  /** The vises. */
  VISES(CatalogueSection.VISES),
  /** The cutters. */
  CUTTERS(CatalogueSection.CUTTERS),
  /** The stock materials. */
  MATERIALS(CatalogueSection.MATERIALS);

  /** The field that names the units of an item. */
  public static final String UNITS = RequestFields.UNITS.name();

  private final CatalogueSection<?> kind;

  CatalogueShelf(CatalogueSection<?> kind) {
    this.kind = kind;
  }

  @Override
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The items as they would be described in full in a request.
   *
   * @param catalogue the catalogue
   * @param units the units of their numbers
   * @return the items by name
   */
  public Map<String, ObjectNode> items(Catalogue catalogue, UnitSystem units) {
    return kind.written(catalogue, units);
  }

  /**
   * An item as a request would describe it in other units.
   *
   * @param item the item, in which {@link #problems} found nothing wrong
   * @param units the units to write it in
   */
  public ObjectNode written(JsonNode item, UnitSystem units) {
    return kind.written(item, units);
  }

  /**
   * What is wrong with an item.
   *
   * @param item the item
   * @return everything that is wrong; empty if it can be put on the shelf
   */
  public List<Problem> problems(JsonNode item) {
    return kind.problems(item);
  }

  /** The fields of an item, each before the fields inside it. */
  public List<FieldGuide.Entry> fields() {
    return FieldGuide.entries(kind.shape(), UnitSystem.METRIC);
  }

  /**
   * Reads the catalogue from its items.
   *
   * @param items the items of each shelf by name
   * @throws IllegalArgumentException if something is wrong with one
   */
  public static Catalogue catalogue(Map<CatalogueShelf, Map<String, ObjectNode>> items) {
    return CatalogueReader.sealed(
        CatalogueSection.MACHINES.read(items.getOrDefault(MACHINES, Map.of())),
        CatalogueSection.VISES.read(items.getOrDefault(VISES, Map.of())),
        CatalogueSection.CUTTERS.read(items.getOrDefault(CUTTERS, Map.of())),
        CatalogueSection.MATERIALS.read(items.getOrDefault(MATERIALS, Map.of())));
  }

  /** What stands on the shelf. */
  CatalogueSection<?> kind() {
    return kind;
  }
}
