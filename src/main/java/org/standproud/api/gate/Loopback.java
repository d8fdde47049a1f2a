package org.standproud.api.gate;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Holds a service that asks nobody who he is to this machine. */
final class Loopback {

  private Loopback() {}

  /**
   * Refuses any address that other machines reach.
   *
   * @param address address or name to listen on
   * @throws UnsafeAccessException if it is none of this machine alone, or cannot be told
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
