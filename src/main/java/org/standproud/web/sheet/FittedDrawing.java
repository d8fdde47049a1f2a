package org.standproud.web.sheet;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A drawing with its size on paper; the PDF renderer does not scale it. */
final class FittedDrawing {

  private static final Pattern SIZE =
      Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\" width=\"[0-9.]+\" height=\"[0-9.]+\"");

  private FittedDrawing() {}

  /**
   * The drawing in a given width, with the height in proportion.
   *
   * @param svg a drawing
   * @param widthMm its width on paper in mm
   */
  static String of(String svg, double widthMm) {
    Matcher size = SIZE.matcher(svg);
    if (!size.find()) {
      throw new IllegalArgumentException("a drawing without a size");
    }
    double ratio = Double.parseDouble(size.group(2)) / Double.parseDouble(size.group(1));
    String fitted =
        String.format(
            Locale.ROOT,
            "viewBox=\"0 0 %s %s\" width=\"%.2fmm\" height=\"%.2fmm\"",
            size.group(1),
            size.group(2),
            widthMm,
            widthMm * ratio);
    return size.replaceFirst(fitted);
  }
}
