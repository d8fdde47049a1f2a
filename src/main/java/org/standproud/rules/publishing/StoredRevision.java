package org.standproud.rules.publishing;

import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.Revision;

/**
 * A revision as it is kept.
 *
 * @param number its place in the log, from 1
 * @param revision its identity, with who wrote it, why and when it was put into service
 * @param publisher who put it into service
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
