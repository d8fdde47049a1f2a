package org.standproud.api.gate;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Binds a service without access control to this machine. */
final class Loopback {

  private Loopback() {}

  /**
   * Refuses any address that other machines can reach.
   *
   * @param address address or name to listen on
   * @throws UnsafeAccessException if other machines can reach it, or it cannot be resolved
   */
  static void require(String address) {
    try {
      for (InetAddress one : InetAddress.getAllByName(address)) {
        if (!one.isLoopbackAddress()) {
          throw UnsafeAccessException.toTheNetwork(address);
        }
      }
    } catch (UnknownHostException e) {
      throw UnsafeAccessException.toTheNetwork(address);
    }
  }
}
