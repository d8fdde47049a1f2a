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
 * @param sequence its number
 * @param revision SHA-256 over the content of the whole catalogue, as in answers
 * @param time time of the change
 * @param author author of the change
 * @param note the reason
 * @param changed the items changed
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
   * @param revision its new revision; absent if it was removed
   * @param content the item as written; null if it was removed, or where only the change is listed
   */
  @Schema(name = "CatalogueChange")
  public record Changed(
      CatalogueShelf shelf,
      String name,
      @Nullable String revision,
      @JsonIgnore @Nullable CanonicalJson content) {}

  CatalogueRevision with(List<Changed> items) {
    return new CatalogueRevision(sequence, revision, time, author, note, items);
  }
}
