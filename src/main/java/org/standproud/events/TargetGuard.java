package org.standproud.events;

import java.math.BigInteger;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Keeps the service from being used to reach what only it can reach (SSRF). An outside target needs
 * https, and its name must not resolve to an address of this machine or of a private network. An
 * inside host, such as the shop system, must be listed in the settings; then http is allowed.
 *
 * <p>Checked when a subscription is created and again before every send, because a name may resolve
 * differently by then.
 */
public final class TargetGuard {

  /** Special-purpose addresses by the IANA registries of RFC 6890, and multicast. */
  private static final List<Block> NOT_OUTSIDE =
      Stream.of(
              "0.0.0.0/8",
              "10.0.0.0/8",
              "100.64.0.0/10",
              "127.0.0.0/8",
              "169.254.0.0/16",
              "172.16.0.0/12",
              "192.0.0.0/24",
              "192.0.2.0/24",
              "192.88.99.0/24",
              "192.168.0.0/16",
              "198.18.0.0/15",
              "198.51.100.0/24",
              "203.0.113.0/24",
              "224.0.0.0/3",
              "::/96",
              "64:ff9b::/96",
              "64:ff9b:1::/48",
              "100::/64",
              "2001::/23",
              "2001:db8::/32",
              "2002::/16",
              "fc00::/7",
              "fe80::/10",
              "fec0::/10",
              "ff00::/8")
          .map(Block::of)
          .toList();

  private final Set<String> insiders;
  private final Resolution resolution;

  /** Resolves a name to addresses. */
  @FunctionalInterface
  interface Resolution {
    InetAddress[] addresses(String host) throws UnknownHostException;
  }

  /** A target that is not allowed. */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused(String why) {
      super(why);
    }
  }

  /**
   * Creates the guard.
   *
   * @param insiders inside hosts that are allowed, as a target writes them
   * @param resolution resolves names
   */
  TargetGuard(Set<String> insiders, Resolution resolution) {
    this.insiders = Set.copyOf(insiders);
    this.resolution = resolution;
  }

  /**
   * Checks a target.
   *
   * @throws Refused if it is not allowed
   */
  public void check(URI target) throws Refused {
    String host = target.getHost();
    String scheme = String.valueOf(target.getScheme());
    if (host == null || target.getUserInfo() != null || target.getFragment() != null) {
      throw new Refused("a target must be https://host/path, without user or fragment");
    }
    if (insiders.contains(host)) {
      if (!Set.of("http", "https").contains(scheme)) {
        throw new Refused("a target must use http or https");
      }
      return;
    }
    if (!scheme.equals("https")) {
      throw new Refused("an outside target must use https");
    }
    for (InetAddress address : addresses(host)) {
      if (NOT_OUTSIDE.stream().anyMatch(block -> block.test(address))) {
        throw new Refused(
            "the target is on this machine or in a private network; list its host in"
                + " standproud.events.inside-hosts to allow it");
      }
    }
  }

  private InetAddress[] addresses(String host) throws Refused {
    try {
      return resolution.addresses(host);
    } catch (UnknownHostException e) {
      throw new Refused("the host of the target is unknown");
    }
  }

  /** A block of addresses. */
  private record Block(BigInteger first, int length, int bits) implements Predicate<InetAddress> {

    static Block of(String text) {
      String[] parts = text.split("/");
      try {
        byte[] first = InetAddress.getByName(parts[0]).getAddress();
        return new Block(new BigInteger(1, first), first.length * 8, Integer.parseInt(parts[1]));
      } catch (UnknownHostException e) {
        throw new IllegalArgumentException(text, e);
      }
    }

    @Override
    public boolean test(InetAddress address) {
      byte[] bytes = address.getAddress();
      int rest = length - bits;
      return bytes.length * 8 == length
          && new BigInteger(1, bytes).shiftRight(rest).equals(first.shiftRight(rest));
    }
  }
}
