package org.standproud.rules.publishing;

/** The store contains something that was never stored. */
public final class StoreDamaged extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message what is damaged
   */
  public StoreDamaged(String message) {
    super(message);
  }
}
