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
 * @param sequence number of the revision; zero before the first
 * @param catalogue the catalogue for reading set-ups
 * @param items the items as written, by shelf and name
 */
public record CatalogueSnapshot(
    long sequence, Catalogue catalogue, Map<CatalogueShelf, Map<String, Item>> items) {

  /** The catalogue before the first item. */
  static final CatalogueSnapshot NOTHING = new CatalogueSnapshot(0, Catalogue.EMPTY, Map.of());

  /**
   * An item as written.
   *
   * @param content its text, whose SHA-256 is its revision
   */
  public record Item(CanonicalJson content) {

    /** The revision of the item. */
    public String revision() {
      return content.sha256();
    }
  }

  /**
   * A change of the catalogue.
   *
   * @param shelf the shelf
   * @param name the name of the item
   * @param content the item; null removes it
   */
  public record Change(CatalogueShelf shelf, String name, @Nullable CanonicalJson content) {}

  static CatalogueSnapshot of(long sequence, Map<CatalogueShelf, Map<String, Item>> items) {
    Map<CatalogueShelf, Map<String, ObjectNode>> shelves = new EnumMap<>(CatalogueShelf.class);
    items.forEach(
        (shelf, shelved) -> {
          Map<String, ObjectNode> texts = new LinkedHashMap<>();
          shelved.forEach((name, item) -> texts.put(name, (ObjectNode) item.content().tree()));
          shelves.put(shelf, texts);
        });
    return new CatalogueSnapshot(sequence, CatalogueShelf.catalogue(shelves), items);
  }

  /**
   * An item.
   *
   * @return the item; null if there is none of this name
   */
  public @Nullable Item item(CatalogueShelf shelf, String name) {
    return items.getOrDefault(shelf, Map.of()).get(name);
  }

  /** The catalogue after a change, as the next revision. */
  CatalogueSnapshot with(Iterable<Change> changes) {
    Map<CatalogueShelf, Map<String, Item>> next = new EnumMap<>(CatalogueShelf.class);
    items.forEach((shelf, shelved) -> next.put(shelf, new LinkedHashMap<>(shelved)));
    for (Change change : changes) {
      Map<String, Item> shelf = next.computeIfAbsent(change.shelf(), s -> new LinkedHashMap<>());
      if (change.content() == null) {
        shelf.remove(change.name());
      } else {
        shelf.put(change.name(), new Item(change.content()));
      }
    }
    return of(sequence + 1, next);
  }
}
