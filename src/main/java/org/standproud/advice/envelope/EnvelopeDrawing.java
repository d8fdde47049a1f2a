package org.standproud.advice.envelope;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Draws an envelope as SVG 1.1 on axes by ratio: the free region as a stepped area, never higher
 * between two columns than at the lower of them, the cards that bound it along its edge, and the
 * set-up as a point. Written with the XML writer of the platform, which needs no fonts and no
 * screen.
 */
public final class EnvelopeDrawing {

  private static final int WIDTH = 640;
  private static final int HEIGHT = 420;
  private static final int LEFT = 70;
  private static final int RIGHT = 20;
  private static final int TOP = 30;
  private static final int BOTTOM = 60;
  private static final double[] TICKS = {1, 2, 5};

  private final Envelope envelope;
  private final XMLStreamWriter out;
  private final DoubleUnaryOperator toX;
  private final DoubleUnaryOperator toY;
  private final double[] over;
  private final double[] depth;

  private EnvelopeDrawing(Envelope envelope, XMLStreamWriter out) {
    this.envelope = envelope;
    this.out = out;
    this.over = range(envelope.columns().stream().map(Column::at).toList(), envelope.now());
    List<Double> depths = new ArrayList<>();
    for (Column column : envelope.columns()) {
      Double free = column.greatestDepth();
      Double refused = column.refusedDepth();
      if (free != null) {
        depths.add(free);
      }
      if (refused != null) {
        depths.add(refused);
      }
    }
    this.depth = range(depths, envelope.nowDepth());
    this.toX = x -> LEFT + (WIDTH - LEFT - RIGHT) * part(x, over);
    this.toY = y -> HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * part(y, depth);
  }

  /**
   * The drawing.
   *
   * @param envelope what to draw
   * @throws IllegalStateException if the platform cannot write XML
   */
  public static String svg(Envelope envelope) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter out = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
      new EnvelopeDrawing(envelope, out).draw();
      out.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("the envelope cannot be drawn", e);
    }
    return text.toString();
  }

  /** Least and greatest, with the set-up in and room at the ends, by ratio. */
  private static double[] range(List<Double> values, double now) {
    double least = now;
    double greatest = now;
    for (double value : values) {
      least = Math.min(least, value);
      greatest = Math.max(greatest, value);
    }
    return new double[] {least / 1.15, greatest * 1.15};
  }

  private static double part(double value, double[] range) {
    return Math.log(value / range[0]) / Math.log(range[1] / range[0]);
  }

  private void draw() throws XMLStreamException {
    out.writeStartElement("svg");
    out.writeDefaultNamespace("http://www.w3.org/2000/svg");
    out.writeAttribute("viewBox", "0 0 " + WIDTH + " " + HEIGHT);
    out.writeAttribute("role", "img");
    out.writeAttribute("font-family", "sans-serif");
    out.writeAttribute("font-size", "12");
    out.writeStartElement("title");
    out.writeCharacters("Greatest axial depth over " + envelope.over());
    out.writeEndElement();
    area();
    axes();
    limits();
    now();
    out.writeEndElement();
  }

  private void area() throws XMLStreamException {
    List<Column> columns = envelope.columns();
    double floor = HEIGHT - BOTTOM;
    for (int i = 0; i + 1 < columns.size(); i++) {
      Double here = columns.get(i).greatestDepth();
      Double next = columns.get(i + 1).greatestDepth();
      if (here != null && next != null) {
        double x = toX.applyAsDouble(columns.get(i).at());
        double y = toY.applyAsDouble(Math.min(here, next));
        box(x, y, toX.applyAsDouble(columns.get(i + 1).at()) - x, floor - y);
      }
    }
  }

  private void box(double x, double y, double width, double height) throws XMLStreamException {
    out.writeEmptyElement("rect");
    out.writeAttribute("class", "free");
    out.writeAttribute("x", number(x));
    out.writeAttribute("y", number(y));
    out.writeAttribute("width", number(width));
    out.writeAttribute("height", number(height));
    out.writeAttribute("fill", "#b9d8b4");
  }

  private void axes() throws XMLStreamException {
    double floor = HEIGHT - BOTTOM;
    line(LEFT, floor, WIDTH - RIGHT, floor, "#222");
    line(LEFT, floor, LEFT, TOP, "#222");
    for (double tick : ticks(over)) {
      double x = toX.applyAsDouble(tick);
      line(x, floor, x, floor + 5, "#222");
      text(x, floor + 20, "middle", plain(tick));
    }
    for (double tick : ticks(depth)) {
      double y = toY.applyAsDouble(tick);
      line(LEFT - 5, y, LEFT, y, "#222");
      text(LEFT - 8, y + 4, "end", plain(tick));
    }
    text(
        (LEFT + WIDTH - RIGHT) / 2.0,
        HEIGHT - 15,
        "middle",
        envelope.over() + ", " + envelope.overUnit());
    text(LEFT, TOP - 12, "start", "axial depth, " + envelope.depthUnit());
  }

  /** Each card once for every run of columns that it bounds first. */
  private void limits() throws XMLStreamException {
    String last = "";
    for (Column column : envelope.columns()) {
      String limit = column.limits().isEmpty() ? "" : column.limits().get(0);
      Double refused = column.refusedDepth();
      if (refused != null && !limit.equals(last)) {
        double x = toX.applyAsDouble(column.at());
        text(x, toY.applyAsDouble(refused) - 6, "start", limit);
      }
      last = limit;
    }
  }

  private void now() throws XMLStreamException {
    out.writeEmptyElement("circle");
    out.writeAttribute("class", envelope.nowInside() ? "now inside" : "now outside");
    out.writeAttribute("cx", number(toX.applyAsDouble(envelope.now())));
    out.writeAttribute("cy", number(toY.applyAsDouble(envelope.nowDepth())));
    out.writeAttribute("r", "5");
    out.writeAttribute("fill", envelope.nowInside() ? "#1c6b2a" : "#b3261e");
  }

  private void line(double x1, double y1, double x2, double y2, String stroke)
      throws XMLStreamException {
    out.writeEmptyElement("line");
    out.writeAttribute("x1", number(x1));
    out.writeAttribute("y1", number(y1));
    out.writeAttribute("x2", number(x2));
    out.writeAttribute("y2", number(y2));
    out.writeAttribute("stroke", stroke);
  }

  private void text(double x, double y, String anchor, String words) throws XMLStreamException {
    out.writeStartElement("text");
    out.writeAttribute("x", number(x));
    out.writeAttribute("y", number(y));
    out.writeAttribute("text-anchor", anchor);
    out.writeCharacters(words);
    out.writeEndElement();
  }

  private static List<Double> ticks(double[] range) {
    List<Double> ticks = new ArrayList<>();
    int from = (int) Math.floor(Math.log10(range[0]));
    int to = (int) Math.ceil(Math.log10(range[1]));
    for (int power = from; power <= to; power++) {
      for (double tick : TICKS) {
        double value = tick * Math.pow(10, power);
        if (value >= range[0] && value <= range[1]) {
          ticks.add(value);
        }
      }
    }
    return ticks;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.6g", value).replaceAll("\\.?0+$", "");
  }
}
