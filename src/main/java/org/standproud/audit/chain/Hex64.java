package org.standproud.audit.chain;

import java.util.HexFormat;

/** The format of every seal and digest: 64 hexadecimal digits. */
final class Hex64 {

  private Hex64() {}

  static boolean is(String text) {
    return text.length() == 64 && text.chars().allMatch(HexFormat::isHexDigit);
  }
}
