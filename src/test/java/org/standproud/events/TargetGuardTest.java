package org.standproud.events;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.URI;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks by the IANA special-purpose address registries (RFC 6890) [memory]. */
class TargetGuardTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "127.0.0.1",
        "10.255.255.255",
        "172.16.0.1",
        "172.31.255.255",
        "192.168.1.1",
        "169.254.169.254",
        "100.64.0.1",
        "0.0.0.0",
        "224.0.0.1",
        "255.255.255.255",
        "::1",
        "::",
        "fe80::1",
        "fd12::1",
        "ff02::1",
        "::ffff:192.168.0.1",
        "64:ff9b::a00:1",
        "2002:a00:1::"
      })
  void aNameThatLeadsInsideIsRefused(String address) {
    assertThatThrownBy(() -> leadingTo(address).check(URI.create("https://shop.example/e")))
        .isInstanceOf(TargetGuard.Refused.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "9.255.255.255", "11.0.0.0", "172.15.255.255", "172.32.0.0", "192.167.255.255",
        "100.63.255.255", "100.128.0.0", "223.255.255.255", "2600::1", "2a00::1"
      })
  void aNameThatLeadsOutsidePasses(String address) {
    assertThatCode(() -> leadingTo(address).check(URI.create("https://shop.example/e")))
        .doesNotThrowAnyException();
  }

  @Test
  void ofSeveralAddressesOneInsideIsEnoughToRefuse() {
    TargetGuard guard =
        new TargetGuard(
            Set.of(),
            host ->
                new InetAddress[] {
                  InetAddress.getByName("9.9.9.9"), InetAddress.getByName("10.0.0.1")
                });
    assertThatThrownBy(() -> guard.check(URI.create("https://shop.example/e")))
        .isInstanceOf(TargetGuard.Refused.class);
  }

  private static TargetGuard leadingTo(String address) {
    return new TargetGuard(Set.of(), host -> new InetAddress[] {InetAddress.getByName(address)});
  }
}
