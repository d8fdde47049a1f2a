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
 * A shelf of the catalogue. An item is told as a request would describe it in full, with a field
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
   * @param told the item, in which {@link #problems} found nothing wrong
   * @param units the units to write it in
   */
  public ObjectNode written(JsonNode told, UnitSystem units) {
    return kind.written(told, units);
  }

  /**
   * What is wrong with an item.
   *
   * @param told the item
   * @return everything that is wrong; empty if it can be put on the shelf
   */
  public List<Problem> problems(JsonNode told) {
    return kind.problems(told);
  }

  /** The fields of an item, each before the fields inside it. */
  public List<FieldGuide.Entry> fields() {
    return FieldGuide.entries(kind.shape(), UnitSystem.METRIC);
  }

  /**
   * The catalogue of what is told.
   *
   * @param told the items of each shelf by name
   * @throws IllegalArgumentException if something is wrong with one
   */
  public static Catalogue catalogue(Map<CatalogueShelf, Map<String, ObjectNode>> told) {
    return CatalogueReader.sealed(
        CatalogueSection.MACHINES.read(told.getOrDefault(MACHINES, Map.of())),
        CatalogueSection.VISES.read(told.getOrDefault(VISES, Map.of())),
        CatalogueSection.CUTTERS.read(told.getOrDefault(CUTTERS, Map.of())),
        CatalogueSection.MATERIALS.read(told.getOrDefault(MATERIALS, Map.of())));
  }

  /** What stands on the shelf. */
  CatalogueSection<?> kind() {
    return kind;
  }
}
