package org.standproud.api.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.shop.CatalogueSnapshot;

/**
 * The precondition of a write: If-Match with the revision the caller fetched, or If-None-Match: *
 * for a new item (RFC 9110). It keeps a caller from overwriting a change it has not seen.
 *
 * @param revisions accepted revisions; null without If-Match
 * @param nothing whether the item must not exist yet
 */
record Expected(@Nullable List<String> revisions, boolean nothing) {

  private static final String ANY = "*";

  /**
   * Reads the headers of a request.
   *
   * @throws BadParameterException if one of them is not a list of entity tags
   */
  static Expected of(HttpHeaders headers) {
    try {
      List<String> match = headers.getIfMatch();
      return new Expected(match.isEmpty() ? null : match, headers.getIfNoneMatch().contains(ANY));
    } catch (IllegalArgumentException e) {
      throw new BadParameterException(
          "If-Match or If-None-Match", "must be an entity tag in quotes, or *");
    }
  }

  /**
   * Refuses if the precondition fails.
   *
   * @param there the current revision, null if there is no item
   */
  void check(CatalogueSnapshot.@Nullable Item there) {
    if (revisions == null && !nothing) {
      throw new Refusal(
          RefusalKind.PRECONDITION_REQUIRED, RefusalKind.PRECONDITION_REQUIRED.meaning());
    }
    if (nothing && there != null) {
      throw new Refusal(RefusalKind.PRECONDITION_FAILED, "An item of this name already exists.");
    }
    if (revisions != null && there == null) {
      throw new Refusal(RefusalKind.PRECONDITION_FAILED, "There is no item of this name.");
    }
    if (revisions != null && there != null && !matches(revisions, there)) {
      throw new Refusal(
          RefusalKind.PRECONDITION_FAILED,
          "The item now has the revision " + there.revision() + ".");
    }
  }

  private static boolean matches(List<String> revisions, CatalogueSnapshot.Item there) {
    return revisions.contains(ANY) || revisions.contains(tag(there));
  }

  /** The entity tag of an item. */
  static String tag(CatalogueSnapshot.Item item) {
    return '"' + item.revision() + '"';
  }
}
