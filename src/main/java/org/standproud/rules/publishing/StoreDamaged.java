package org.standproud.rules.publishing;

/** The store holds something that it never was given. */
public final class StoreDamaged extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  /**
   * Says what.
   *
   * @param message what is damaged
   */
  public StoreDamaged(String message) {
    super(message);
  }
}
