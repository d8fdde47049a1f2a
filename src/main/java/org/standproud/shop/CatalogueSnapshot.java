package org.standproud.shop;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.CatalogueShelf;
import tools.jackson.databind.node.ObjectNode;

/**
 * The catalogue at one of its revisions.
 *
 * @param sequence the place of the revision; zero before the first
 * @param catalogue what set-ups are read with
 * @param items the items as they were written, by shelf and name
 */
public record CatalogueSnapshot(
    long sequence, Catalogue catalogue, Map<CatalogueShelf, Map<String, Item>> items) {

  /** Before the first item. */
  static final CatalogueSnapshot NOTHING = new CatalogueSnapshot(0, Catalogue.EMPTY, Map.of());

  /**
   * An item as it was written.
   *
   * @param told its text, whose SHA-256 is its revision
   */
  public record Item(CanonicalJson told) {

    /** The revision of the item. */
    public String revision() {
      return told.sha256();
    }
  }

  /**
   * A change of the catalogue.
   *
   * @param shelf the shelf
   * @param name the name of the item
   * @param told the item; null removes it
   */
  public record Change(CatalogueShelf shelf, String name, @Nullable CanonicalJson told) {}

  static CatalogueSnapshot of(long sequence, Map<CatalogueShelf, Map<String, Item>> items) {
    Map<CatalogueShelf, Map<String, ObjectNode>> shelves = new EnumMap<>(CatalogueShelf.class);
    items.forEach(
        (shelf, shelved) -> {
          Map<String, ObjectNode> texts = new LinkedHashMap<>();
          shelved.forEach((name, item) -> texts.put(name, (ObjectNode) item.told().tree()));
          shelves.put(shelf, texts);
        });
    return new CatalogueSnapshot(sequence, CatalogueShelf.catalogue(shelves), items);
  }

  /**
   * An item.
   *
   * @return the item; null if there is none of the name
   */
  public @Nullable Item item(CatalogueShelf shelf, String name) {
    return items.getOrDefault(shelf, Map.of()).get(name);
  }

  /** The catalogue after a change, at the next place. */
  CatalogueSnapshot with(Iterable<Change> changes) {
    Map<CatalogueShelf, Map<String, Item>> next = new EnumMap<>(CatalogueShelf.class);
    items.forEach((shelf, shelved) -> next.put(shelf, new LinkedHashMap<>(shelved)));
    for (Change change : changes) {
      Map<String, Item> shelf = next.computeIfAbsent(change.shelf(), s -> new LinkedHashMap<>());
      if (change.told() == null) {
        shelf.remove(change.name());
      } else {
        shelf.put(change.name(), new Item(change.told()));
      }
    }
    return of(sequence + 1, next);
  }
}
