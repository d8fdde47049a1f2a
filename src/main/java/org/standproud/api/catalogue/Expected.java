package org.standproud.api.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.standproud.api.problem.BadParameter;
import org.standproud.api.problem.ProblemKind;
import org.standproud.api.problem.Refused;
import org.standproud.api.shop.Shelved;

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
   * @throws BadParameter if one of them is no list of entity tags
   */
  static Expected of(HttpHeaders headers) {
    try {
      List<String> match = headers.getIfMatch();
      return new Expected(match.isEmpty() ? null : match, headers.getIfNoneMatch().contains(ANY));
    } catch (IllegalArgumentException e) {
      throw new BadParameter(
          "If-Match or If-None-Match", "an entity tag in quotes, or * is wanted");
    }
  }

  /**
   * Refuses if something else is there.
   *
   * @param there what is there, null if nothing is
   */
  void check(Shelved.@Nullable Item there) {
    if (revisions == null && !nothing) {
      throw new Refused(
          ProblemKind.PRECONDITION_REQUIRED, ProblemKind.PRECONDITION_REQUIRED.meaning());
    }
    if (nothing && there != null) {
      throw new Refused(
          ProblemKind.PRECONDITION_FAILED, "An item of this name is on the shelf already.");
    }
    if (revisions != null && there == null) {
      throw new Refused(ProblemKind.PRECONDITION_FAILED, "No item of this name is on the shelf.");
    }
    if (revisions != null && there != null && !matches(revisions, there)) {
      throw new Refused(
          ProblemKind.PRECONDITION_FAILED,
          "The item on the shelf has the revision " + there.revision() + ".");
    }
  }

  private static boolean matches(List<String> revisions, Shelved.Item there) {
    return revisions.contains(ANY) || revisions.contains(tag(there));
  }

  /** The entity tag of an item. */
  static String tag(Shelved.Item item) {
    return '"' + item.revision() + '"';
  }
}
