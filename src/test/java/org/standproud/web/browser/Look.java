package org.standproud.web.browser;

/**
 * How a page is looked at.
 *
 * @param name for the file of its picture
 * @param width of the window in CSS pixels
 * @param height of the window in CSS pixels
 * @param dots device pixels a CSS pixel: a browser zoomed to 200 % has half the CSS pixels and
 *     twice the dots
 * @param dark whether the dark page is asked for
 */
record Look(String name, int width, int height, double dots, boolean dark) {

  /** A desk. */
  static final Look WIDE = new Look("wide", 1280, 900, 1, false);

  /** A desk in the dark. */
  static final Look WIDE_DARK = new Look("wide-dark", 1280, 900, 1, true);

  /** A tablet held upright. */
  static final Look TABLET = new Look("tablet", 820, 1180, 1, false);

  /** A telephone, or half a tablet. */
  static final Look NARROW = new Look("narrow", 400, 800, 1, false);

  /** A telephone in the dark. */
  static final Look NARROW_DARK = new Look("narrow-dark", 400, 800, 1, true);

  /** A desk, zoomed to 200 %. */
  static final Look ZOOMED = new Look("zoomed", 640, 450, 2, false);
}
