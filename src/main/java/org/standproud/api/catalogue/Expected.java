package org.standproud.api.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.shop.CatalogueSnapshot;

/**
 * What a caller believes to be there, so that he does not undo what he has not seen: If-Match with
 * the revision he fetched, or If-None-Match: * where he makes something new (RFC 9110).
 *
 * @param revisions revisions one of which it has to have; null if he told none
 * @param nothing whether nothing may be there
 */
record Expected(@Nullable List<String> revisions, boolean nothing) {

  private static final String ANY = "*";

  /**
   * What the headers of a request say.
   *
   * @throws BadParameterException if one of them is no list of entity tags
   */
  static Expected of(HttpHeaders headers) {
    try {
      List<String> match = headers.getIfMatch();
      return new Expected(match.isEmpty() ? null : match, headers.getIfNoneMatch().contains(ANY));
    } catch (IllegalArgumentException e) {
      throw new BadParameterException(
          "If-Match or If-None-Match", "an entity tag in quotes, or * is wanted");
    }
  }

  /**
   * Refuses if something else is there.
   *
   * @param there what is there, null if nothing is
   */
  void check(CatalogueSnapshot.@Nullable Item there) {
    if (revisions == null && !nothing) {
      throw new Refusal(
          RefusalKind.PRECONDITION_REQUIRED, RefusalKind.PRECONDITION_REQUIRED.meaning());
    }
    if (nothing && there != null) {
      throw new Refusal(
          RefusalKind.PRECONDITION_FAILED, "An item of this name is on the shelf already.");
    }
    if (revisions != null && there == null) {
      throw new Refusal(RefusalKind.PRECONDITION_FAILED, "No item of this name is on the shelf.");
    }
    if (revisions != null && there != null && !matches(revisions, there)) {
      throw new Refusal(
          RefusalKind.PRECONDITION_FAILED,
          "The item on the shelf has the revision " + there.revision() + ".");
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
