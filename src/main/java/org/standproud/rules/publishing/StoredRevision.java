package org.standproud.rules.publishing;

import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.Revision;

/**
 * A stored revision.
 *
 * @param number its number in the log, from 1
 * @param revision its identity, with author, reason and time of publication
 * @param publisher its publisher
 */
public record StoredRevision(long number, Revision revision, String publisher) {

  /** The id of the revision. */
  public String id() {
    return revision.id();
  }

  Authorship authorship() {
    return new Authorship(revision.author(), revision.note(), revision.time(), revision.parent());
  }
}
