package org.standproud.settings;

import java.time.Duration;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.util.unit.DataSize;

/** An invalid property, with which the service does not start: name, value and what is allowed. */
public final class SettingRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String property;
  private final boolean repeatable;
  private final String allowed;

  /**
   * Creates the exception.
   *
   * @param property its full name
   * @param value the value; null for a secret
   * @param allowed a sentence on what is allowed
   */
  public SettingRefused(String property, @Nullable Object value, String allowed) {
    super(
        "The property "
            + property
            + " is refused"
            + (value == null ? "." : ": its value is \"" + value + "\"."));
    this.property = property;
    this.repeatable = value != null;
    this.allowed = allowed;
  }

  /** The full name of the property. */
  String property() {
    return property;
  }

  /** Whether the value may be shown; not for a secret. */
  boolean isRepeatable() {
    return repeatable;
  }

  /** What is allowed. */
  public String allowed() {
    return allowed;
  }

  /**
   * Checks a number.
   *
   * @param property its full name
   * @param value the number given
   * @param least the least allowed
   * @param most the greatest allowed
   * @throws SettingRefused if it is outside
   */
  public static void range(String property, long value, long least, long most) {
    if (value < least || value > most) {
      throw new SettingRefused(
          property,
          value,
          most == Long.MAX_VALUE || most == Integer.MAX_VALUE
              ? "A whole number from " + least + " is allowed."
              : "A whole number from " + least + " to " + most + " is allowed.");
    }
  }

  /**
   * Checks that a duration is positive.
   *
   * @param property its full name
   * @param value the duration
   * @throws SettingRefused if it is missing, zero or negative
   */
  public static void positive(String property, @Nullable Duration value) {
    if (value == null || value.isZero() || value.isNegative()) {
      throw new SettingRefused(
          property, Objects.toString(value, ""), "A duration above zero is allowed, such as 10s.");
    }
  }

  /**
   * Checks the size of text held in memory.
   *
   * @param property its full name
   * @param value the size
   * @throws SettingRefused if it is missing, less than a byte or more than an array can hold
   */
  public static void size(String property, @Nullable DataSize value) {
    if (value == null || value.toBytes() < 1 || value.toBytes() > Integer.MAX_VALUE) {
      throw new SettingRefused(
          property, Objects.toString(value, ""), "A size from 1B to 2047MB is allowed.");
    }
  }

  /**
   * Checks that a value is present.
   *
   * @param property its full name
   * @param value the value
   * @param allowed a sentence on what is allowed
   * @throws SettingRefused if it is missing or blank
   */
  public static void given(String property, @Nullable Object value, String allowed) {
    if (value == null || value.toString().isBlank()) {
      throw new SettingRefused(property, "", allowed);
    }
  }
}
