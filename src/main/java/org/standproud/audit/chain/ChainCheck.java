package org.standproud.audit.chain;

/**
 * A chain check, fed with the checkpoints first and then with the links in stored or exported
 * order. Not thread-safe.
 */
public interface ChainCheck {

  /**
   * Adds a checkpoint; add them all before the first link.
   *
   * @param checkpoint from outside the chain
   */
  void hold(Checkpoint checkpoint);

  /**
   * Adds the next link.
   *
   * @param link as stored or exported
   * @return whether no fault was found so far
   */
  boolean next(Link link);

  /**
   * Reports a fault found outside the links.
   *
   * @param kind kind of the change
   * @param place its position
   * @param explanation one sentence for the auditor
   */
  void fault(ChainFault.Kind kind, long place, String explanation);

  /**
   * Ends the check.
   *
   * @return the report
   */
  ChainReport finish();
}
