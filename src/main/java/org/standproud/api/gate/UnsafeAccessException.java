package org.standproud.api.gate;

/** The service was told to let callers in whom it does not know. */
final class UnsafeAccessException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String remedy;

  private UnsafeAccessException(String reason, String remedy) {
    super(reason);
    this.remedy = remedy;
  }

  /** Other machines could call a service that asks nobody who he is. */
  static UnsafeAccessException toTheNetwork(String address) {
    return new UnsafeAccessException(
        "The service was to listen on "
            + address
            + " without asking anyone who he is. It listens to other machines only with access"
            + " control.",
        "Set standproud.access=keys, or leave server.address at 127.0.0.1.");
  }

  /** Somebody set up tokens and believes that they are wanted. */
  static UnsafeAccessException withTokensUnread() {
    return new UnsafeAccessException(
        "Tokens are set up, but nobody is asked for one.", "Set standproud.access=keys as well.");
  }

  /** What to do about it. */
  String remedy() {
    return remedy;
  }
}
