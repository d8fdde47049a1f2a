package org.standproud.rules.publishing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Stores revisions in an order that only grows. Several replicas may share one store. Every
 * completed call is durable.
 */
public interface RevisionStore {

  /** Every revision, oldest first. */
  List<StoredRevision> revisions();

  /** The revision last put into service, if there is one. */
  Optional<StoredRevision> latest();

  /**
   * Appends a revision.
   *
   * @param revision the revision; its number follows the latest and its parent is the latest
   * @param files the text of each of its files by its path
   * @return false if another revision came first, in which case nothing is added
   */
  boolean append(StoredRevision revision, Map<String, String> files);

  /**
   * The text of each file of a revision by its path, if there is such a revision.
   *
   * @param revision its id
   */
  Optional<Map<String, String>> files(String revision);

  /**
   * The files whose text no revision ever had.
   *
   * @param files the text of each file by its path
   * @return the paths
   */
  Set<String> unseen(Map<String, String> files);

  /** Every proposal that is neither published nor withdrawn, oldest first. */
  List<Proposal> proposals();

  /**
   * Stores a proposal.
   *
   * @param proposal the proposal
   */
  void keep(Proposal proposal);

  /**
   * Deletes a proposal; does nothing if there is none.
   *
   * @param proposal its id
   */
  void drop(String proposal);
}
