package org.standproud.audit.chain;

/**
 * A check of a chain, fed with its checkpoints first and then with its links in the order they are
 * stored or exported. Not safe for use by several threads.
 */
public interface ChainCheck {

  /**
   * Takes a checkpoint to hold the chain against; give them all before the first link.
   *
   * @param checkpoint from outside the chain
   */
  void hold(Checkpoint checkpoint);

  /**
   * Takes the next link.
   *
   * @param link as stored or exported
   * @return whether no fault was found so far
   */
  boolean next(Link link);

  /**
   * Takes note of a fault found by looking at more than the links.
   *
   * @param kind what was done
   * @param place where
   * @param explanation one sentence for the auditor
   */
  void fault(ChainFault.Kind kind, long place, String explanation);

  /**
   * Ends the check.
   *
   * @return what was found
   */
  ChainReport finish();
}
