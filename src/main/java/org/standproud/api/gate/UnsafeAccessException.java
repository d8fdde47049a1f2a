package org.standproud.api.gate;

/** The configuration would let in unidentified callers. */
final class UnsafeAccessException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String remedy;

  private UnsafeAccessException(String reason, String remedy) {
    super(reason);
    this.remedy = remedy;
  }

  /** Other machines could call a service without access control. */
  static UnsafeAccessException toTheNetwork(String address) {
    return new UnsafeAccessException(
        "The service was configured to listen on "
            + address
            + " without access control. It listens to other machines only with access control.",
        "Set standproud.access=keys, or leave server.address at 127.0.0.1.");
  }

  /** Tokens are configured, but access control is off. */
  static UnsafeAccessException withTokensUnread() {
    return new UnsafeAccessException(
        "Tokens are configured, but standproud.access=keys is not set.",
        "Set standproud.access=keys as well.");
  }

  /** What to do about it. */
  String remedy() {
    return remedy;
  }
}
