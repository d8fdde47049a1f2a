package org.standproud.shop;

import com.fasterxml.jackson.annotation.JsonIgnore;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.setup.request.CatalogueShelf;

/**
 * A revision of the catalogue.
 *
 * @param sequence its place among the revisions
 * @param revision SHA-256 over the content of the whole catalogue, as answers name it
 * @param time when it was made
 * @param author who made it
 * @param note why
 * @param changed what was changed
 */
public record CatalogueRevision(
    long sequence,
    String revision,
    Instant time,
    String author,
    String note,
    List<Changed> changed) {

  /** Copies the list. */
  public CatalogueRevision {
    changed = List.copyOf(changed);
  }

  /**
   * An item that was changed.
   *
   * @param shelf the shelf
   * @param name the name of the item
   * @param revision its new revision; null if it was taken away
   * @param told the item as it was written; null if it was removed, or where only the change is
   *     listed
   */
  @Schema(name = "CatalogueChange")
  public record Changed(
      CatalogueShelf shelf,
      String name,
      @Nullable String revision,
      @JsonIgnore @Nullable CanonicalJson told) {}

  CatalogueRevision with(List<Changed> items) {
    return new CatalogueRevision(sequence, revision, time, author, note, items);
  }
}
