package org.standproud.web.browser;

import java.util.List;

/**
 * Contrast between two colours by the relative luminance of WCAG 2.2 [memory]: (L1 + 0.05) / (L2 +
 * 0.05), where L = 0.2126 R + 0.7152 G + 0.0722 B over linear sRGB. The checker measures text of
 * the page by the same formula; this is for what it leaves out, the lines and letters of drawings.
 */
final class Contrast {

  private Contrast() {}

  /**
   * The least contrast of some parts of drawings against the paper they are drawn on.
   *
   * @param parts selector of the parts
   * @param property whose colour is meant, fill or stroke
   */
  static double of(Browser browser, String parts, String property) {
    List<List<String>> pairs =
        browser.ask(
            "Array.from(document.querySelectorAll(arguments[0]))"
                + ".map(e => [getComputedStyle(e)[arguments[1]],"
                + " getComputedStyle(e.closest('figure, .finding')).backgroundColor])"
                + ".filter(p => p[0] !== 'none')",
            parts,
            property);
    return pairs.stream()
        .mapToDouble(pair -> between(pair.get(0), pair.get(1)))
        .min()
        .orElseThrow(() -> new IllegalStateException("nothing is drawn with " + parts));
  }

  /** Between two colours as a browser computes them, such as rgb(22, 25, 31). */
  static double between(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    String[] parts = colour.replaceAll("[^0-9.,]", "").split(",");
    return 0.2126 * linear(parts[0]) + 0.7152 * linear(parts[1]) + 0.0722 * linear(parts[2]);
  }

  private static double linear(String part) {
    double s = Double.parseDouble(part) / 255;
    return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
  }
}
