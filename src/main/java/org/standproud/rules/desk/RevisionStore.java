package org.standproud.rules.desk;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Where revisions are kept, in an order that only grows. Several replicas may share one store. What
 * a method returned from is durable.
 */
public interface RevisionStore {

  /** Every revision, oldest first. */
  List<StoredRevision> revisions();

  /** The revision last put into service, if there is one. */
  Optional<StoredRevision> latest();

  /**
   * Adds a revision after the latest.
   *
   * @param revision the revision; its number follows the latest and its parent is the latest
   * @param texts the texts of its files
   * @return false if another revision came first, in which case nothing is added
   */
  boolean append(StoredRevision revision, Collection<String> texts);

  /**
   * The text of a file.
   *
   * @param hash its hash, see {@link TextHash}
   * @throws StoreDamaged if there is none, or it is not what its hash says
   */
  String text(String hash);

  /** Every proposal that is neither published nor withdrawn, oldest first. */
  List<Proposal> proposals();

  /**
   * Keeps a proposal.
   *
   * @param proposal the proposal
   * @param texts the texts of its files
   */
  void keep(Proposal proposal, Collection<String> texts);

  /**
   * Lets a proposal go; does nothing if there is none.
   *
   * @param proposal its id
   */
  void drop(String proposal);
}
