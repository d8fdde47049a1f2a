package org.standproud.api.catalogue;

import java.util.Map;
import java.util.function.BiFunction;
import org.standproud.setup.UnitSystem;
import org.standproud.setup.Worded;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.reading.CatalogueText;
import tools.jackson.databind.node.ObjectNode;

/** A shelf of the catalogue. */
enum Shelf implements Worded {
  /** The machines. */
  MACHINES("machines", CatalogueText::machines),
  /** The vises. */
  VISES("vises", CatalogueText::vises),
  /** The cutters. */
  CUTTERS("cutters", CatalogueText::cutters),
  /** The stock materials. */
  MATERIALS("materials", CatalogueText::materials);

  private final String words;
  private final BiFunction<Catalogue, UnitSystem, Map<String, ObjectNode>> items;

  Shelf(String words, BiFunction<Catalogue, UnitSystem, Map<String, ObjectNode>> items) {
    this.words = words;
    this.items = items;
  }

  @Override
  public String words() {
    return words;
  }

  Map<String, ObjectNode> items(Catalogue catalogue, UnitSystem units) {
    return items.apply(catalogue, units);
  }
}
