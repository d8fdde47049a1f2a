package org.standproud.access;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.standproud.setup.Worded;

/** A role of callers. */
public enum Role implements Worded {
  /** A shop system or a machinist: checks set-ups and signs off findings. */
  CALLER,
  /** A shop engineer: changes cards and catalogue. */
  RULE_EDITOR,
  /** Puts cards into service and takes them out of service. */
  RULE_PUBLISHER,
  /** Reads and verifies all records. */
  AUDITOR,
  /** Runs the service: keys, metrics, retention. */
  OPERATOR;

  @Override
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Parses a role.
   *
   * @param word its words; a hyphen or an underscore may replace the space
   */
  public static Optional<Role> of(String word) {
    String plain = word.replace('-', ' ').replace('_', ' ');
    return Arrays.stream(values()).filter(r -> r.words().equals(plain)).findFirst();
  }
}
