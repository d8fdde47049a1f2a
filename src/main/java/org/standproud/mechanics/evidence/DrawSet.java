package org.standproud.mechanics.evidence;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** A set of the draws of one joint sample: those in which something is so. Immutable. */
public final class DrawSet {

  private final long[] bits;
  private final int draws;

  private DrawSet(long[] bits, int draws) {
    this.bits = bits;
    this.draws = draws;
  }

  /** No draw of so many. */
  public static DrawSet none(int draws) {
    return new DrawSet(new long[(draws + 63) >> 6], draws);
  }

  /** Every draw of so many. */
  public static DrawSet all(int draws) {
    return where(draws, draw -> true);
  }

  /** The draws that satisfy a condition. */
  public static DrawSet where(int draws, IntPredicate condition) {
    long[] bits = new long[(draws + 63) >> 6];
    for (int draw = 0; draw < draws; draw++) {
      if (condition.test(draw)) {
        bits[draw >> 6] |= 1L << draw;
      }
    }
    return new DrawSet(bits, draws);
  }

  /** How many draws the joint sample has. */
  public int draws() {
    return draws;
  }

  /** Whether a draw is in the set. */
  public boolean contains(int draw) {
    return (bits[draw >> 6] >>> draw & 1) != 0;
  }

  /** How many draws are in the set. */
  public int count() {
    int count = 0;
    for (long word : bits) {
      count += Long.bitCount(word);
    }
    return count;
  }

  /** The part of all draws that is in the set, 0 to 1. */
  public double share() {
    return (double) count() / draws;
  }

  /** The draws in both sets. */
  public DrawSet and(DrawSet other) {
    long[] both = bits.clone();
    for (int i = 0; i < both.length; i++) {
      both[i] &= other.bits[i];
    }
    return new DrawSet(both, draws);
  }

  /** The draws in either set. */
  public DrawSet or(DrawSet other) {
    long[] either = bits.clone();
    for (int i = 0; i < either.length; i++) {
      either[i] |= other.bits[i];
    }
    return new DrawSet(either, draws);
  }

  /** The draws not in the set. */
  public DrawSet not() {
    long[] rest = new long[bits.length];
    for (int i = 0; i < rest.length; i++) {
      int left = draws - 64 * i;
      rest[i] = ~bits[i] & (left >= 64 ? -1L : (1L << left) - 1);
    }
    return new DrawSet(rest, draws);
  }

  /** Whether no draw is in the set. */
  public boolean isEmpty() {
    return count() == 0;
  }

  /** Whether every draw is in the set. */
  public boolean isAll() {
    return count() == draws;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DrawSet set && draws == set.draws && Arrays.equals(bits, set.bits);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bits);
  }

  @Override
  public String toString() {
    return count() + " of " + draws + " draws";
  }
}
