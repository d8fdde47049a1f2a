package org.standproud.drawing;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A drawing read back as XML, so that tests look at what a reader gets. */
public final class Picture {

  private final Document document;

  public Picture(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      document =
          factory
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    } catch (Exception e) {
      throw new AssertionError("the drawing is not well-formed XML: " + svg, e);
    }
  }

  public List<Element> elements(String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  public Optional<Element> part(String part) {
    return elements("*").stream().filter(e -> part.equals(e.getAttribute("data-part"))).findFirst();
  }

  public Element the(String part) {
    return part(part).orElseThrow(() -> new AssertionError("nothing is drawn as " + part));
  }

  public double number(String part, String attribute) {
    return Double.parseDouble(the(part).getAttribute(attribute));
  }

  /** The points of a line: x0, y0, x1, y1, … */
  public double[] points(String part) {
    return Arrays.stream(the(part).getAttribute("points").split("[ ,]"))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  public String words() {
    return document.getDocumentElement().getTextContent();
  }

  public Element root() {
    return document.getDocumentElement();
  }
}
