package org.standproud;

/**
 * Pages and pictures under api-docs that tests make from the program and hold to what is committed.
 * {@code mvn -Pregenerate verify} writes all of them.
 */
public final class GeneratedPages {

  private static final boolean WRITTEN = Boolean.getBoolean("pages.write");

  private GeneratedPages() {}

  /** Whether a test writes its page before it compares. */
  public static boolean areWritten() {
    return WRITTEN;
  }
}
