package org.standproud.drawing;

import java.util.Locale;

/**
 * Builds one SVG image. All text is escaped, and a coordinate that is not finite is refused, so
 * that no drawing misleads by leaving something out.
 */
public final class Svg {

  /** Height of plain lettering in user units. */
  public static final double LETTER = 13;

  private final StringBuilder body = new StringBuilder();
  private final double width;
  private final double height;
  private final String name;
  private final String title;
  private final String description;
  private String scale = "";

  /** Anchor of lettering relative to its point. */
  public enum Anchor {
    /** It begins there. */
    START("start"),
    /** Its middle is there. */
    MIDDLE("middle"),
    /** It ends there. */
    END("end");

    private final String word;

    Anchor(String word) {
      this.word = word;
    }
  }

  /**
   * An empty image.
   *
   * @param name prefix of its ids, unique in a page: lower-case letters
   * @param width width of the view box
   * @param height height of the view box
   * @param title what it shows
   * @param description the same as text, for screen readers
   */
  public Svg(String name, double width, double height, String title, String description) {
    this.name = name;
    this.width = finite(width);
    this.height = finite(height);
    this.title = title;
    this.description = description;
  }

  /**
   * Sets how many user units are a metre, for parts that can be dragged.
   *
   * @param perM user units to a metre
   */
  public void scale(double perM) {
    scale = " data-per-m=\"" + number(perM) + "\"";
  }

  /** A straight line. */
  public void line(Ink ink, double x1, double y1, double x2, double y2) {
    body.append("<line ").append(ink.attributes());
    put("x1", x1).put("y1", y1).put("x2", x2).put("y2", y2).close();
  }

  /** A rectangle given by two opposite corners in any order. */
  public void rect(Ink ink, String part, double x1, double y1, double x2, double y2) {
    body.append("<rect ").append(ink.attributes()).append(" data-part=\"").append(part).append('"');
    put("x", Math.min(x1, x2)).put("y", Math.min(y1, y2));
    put("width", Math.abs(x2 - x1)).put("height", Math.abs(y2 - y1)).close();
  }

  /** A circle. */
  public void circle(Ink ink, String part, double x, double y, double radius) {
    body.append("<circle ").append(ink.attributes());
    body.append(" data-part=\"").append(part).append('"');
    put("cx", x).put("cy", y).put("r", radius).close();
  }

  /** A line through points x0, y0, x1, y1, … */
  public void polyline(Ink ink, String part, double... points) {
    shape("polyline", ink, part, points);
  }

  /** A closed line through points x0, y0, x1, y1, … */
  public void polygon(Ink ink, String part, double... points) {
    shape("polygon", ink, part, points);
  }

  private void shape(String element, Ink ink, String part, double... points) {
    body.append('<').append(element).append(' ').append(ink.attributes());
    body.append(" data-part=\"").append(part).append("\" points=\"");
    for (int i = 0; i < points.length; i++) {
      body.append(i == 0 ? "" : i % 2 == 0 ? " " : ",").append(number(points[i]));
    }
    body.append("\"/>");
  }

  /** Section lines across a rectangle, rising to the right or falling. */
  public void hatch(double x1, double y1, double x2, double y2, boolean rising) {
    double left = Math.min(x1, x2);
    double right = Math.max(x1, x2);
    double top = Math.min(y1, y2);
    double deep = Math.abs(y2 - y1);
    double step = 7;
    for (double start = left - deep + step; start < right; start += step) {
      double from = Math.max(start, left);
      double to = Math.min(start + deep, right);
      double down = from - start;
      double until = to - start;
      if (rising) {
        line(Ink.HATCH, from, top + deep - down, to, top + deep - until);
      } else {
        line(Ink.HATCH, from, top + down, to, top + until);
      }
    }
  }

  /** An arrow head whose point stands at x, y and looks along dx, dy. */
  public void head(Ink ink, double x, double y, double dx, double dy, double length) {
    double size = Math.hypot(dx, dy);
    double ux = dx / size;
    double uy = dy / size;
    double backX = x - ux * length;
    double backY = y - uy * length;
    double half = length * 0.42;
    polygon(
        ink,
        "head",
        x,
        y,
        backX - uy * half,
        backY + ux * half,
        backX + uy * half,
        backY - ux * half);
  }

  /** A line of plain lettering. */
  public void text(double x, double y, Anchor anchor, String words) {
    text("label", LETTER, x, y, anchor, words);
  }

  /** A line of bold lettering. */
  public void boldText(double x, double y, Anchor anchor, String words) {
    body.append("<g font-weight=\"bold\">");
    text("strong", LETTER, x, y, anchor, words);
    body.append("</g>");
  }

  private void text(String kind, double size, double x, double y, Anchor anchor, String words) {
    body.append("<text class=\"i-").append(kind).append("\" fill=\"#000\" stroke=\"none\"");
    put("font-size", size).put("x", x).put("y", y);
    body.append(" text-anchor=\"").append(anchor.word).append("\">");
    body.append(escaped(words)).append("</text>");
  }

  /** Lettering on a patch of paper, so that lines behind it do not cross it out. */
  public void patchedText(double x, double y, Anchor anchor, String words) {
    double wide = words.length() * LETTER * 0.54 + 6;
    double left =
        switch (anchor) {
          case START -> x - 3;
          case MIDDLE -> x - wide / 2;
          case END -> x - wide + 3;
        };
    body.append("<rect class=\"i-paper\" fill=\"#fff\" stroke=\"none\"");
    put("x", left).put("y", y - LETTER + 1).put("width", wide).put("height", LETTER + 3).close();
    text(x, y, anchor, words);
  }

  /** The whole image as an element for HTML, XHTML or a file. */
  public String render() {
    String titleId = name + "-title";
    String descriptionId = name + "-desc";
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\""
        + " aria-labelledby=\""
        + titleId
        + " "
        + descriptionId
        + "\""
        + scale
        + " font-family=\"Sheet, sans-serif\" viewBox=\"0 0 "
        + number(width)
        + " "
        + number(height)
        + "\" width=\""
        + number(width)
        + "\" height=\""
        + number(height)
        + "\"><title id=\""
        + titleId
        + "\">"
        + escaped(title)
        + "</title><desc id=\""
        + descriptionId
        + "\">"
        + escaped(description)
        + "</desc>"
        + body
        + "</svg>";
  }

  private Svg put(String attribute, double value) {
    body.append(' ').append(attribute).append("=\"").append(number(value)).append('"');
    return this;
  }

  private void close() {
    body.append("/>");
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", finite(value));
    return text.equals("-0.00") ? "0.00" : text;
  }

  private static double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a drawing has no place for " + value);
    }
    return value;
  }

  /** Text for XML: escaped, without characters that XML 1.0 cannot hold. */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> escape(c, out));
    return out.toString();
  }

  private static void escape(int c, StringBuilder out) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(XmlText.allows(c) ? c : XmlText.REPLACEMENT);
    }
  }
}
