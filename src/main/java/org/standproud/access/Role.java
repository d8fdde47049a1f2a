package org.standproud.access;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.standproud.setup.Worded;

/** What a caller is trusted with. */
public enum Role implements Worded {
  /** A shop system or a machinist: asks, and answers for going on. */
  CALLER,
  /** A shop engineer: changes cards and catalogue. */
  RULE_EDITOR,
  /** Puts cards into service and takes them out. */
  RULE_PUBLISHER,
  /** Reads all records, and proves them. */
  AUDITOR,
  /** Keeps the service going: keys, metrics, retention. */
  OPERATOR;

  @Override
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The role of a word.
   *
   * @param word its words; a hyphen or an underscore may stand for the space
   */
  public static Optional<Role> of(String word) {
    String plain = word.replace('-', ' ').replace('_', ' ');
    return Arrays.stream(values()).filter(r -> r.words().equals(plain)).findFirst();
  }
}
