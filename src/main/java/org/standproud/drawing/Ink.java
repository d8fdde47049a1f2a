package org.standproud.drawing;

/**
 * Line types of a workshop drawing (ISO 128: wide outlines, narrow dimension lines, chain lines for
 * axes, dashes for absent parts). The attributes print in black and white; a style sheet may colour
 * by the class.
 */
public enum Ink {
  /** The stock. */
  STOCK("stock", "#fff", "#000", 2, ""),
  /** The jaws, the bed of the vise, parallels and stops. */
  VISE("vise", "#fff", "#000", 1.2, ""),
  /** Section lines of what does not move. */
  HATCH("hatch", "none", "#000", 0.5, ""),
  /** Packing. */
  PACKING("packing", "#000", "#000", 1, ""),
  /** The outline of the cutter. */
  CUTTER("cutter", "none", "#000", 1.6, ""),
  /** The cutter at another moment. */
  GHOST("ghost", "none", "#000", 1, "5 4"),
  /** The part of the cutter that is cutting, and its teeth there. */
  CUTTING("cutting", "none", "#000", 4.5, ""),
  /** A tooth that is not cutting. */
  TOOTH("tooth", "#fff", "#000", 1, ""),
  /** A tooth that is cutting. */
  TOOTH_CUTTING("tooth-cutting", "#000", "#000", 1, ""),
  /** The material that the pass removes. */
  REMOVED("removed", "#d8d8d8", "#000", 0.7, ""),
  /** An axis. */
  AXIS("axis", "none", "#000", 0.7, "12 3 2 3"),
  /** Dimension and extension lines. */
  DIMENSION("dimension", "none", "#000", 0.7, ""),
  /** The head of a dimension line. */
  DIMENSION_HEAD("dimension-head", "#000", "#000", 0.5, ""),
  /** Feed and spin. */
  MOTION("motion", "none", "#000", 2.2, ""),
  /** The head of a feed or spin arrow. */
  MOTION_HEAD("motion-head", "#000", "#000", 1, ""),
  /** A likely force. */
  FORCE("force", "#000", "#000", 1, ""),
  /** The worst force. */
  FORCE_WORST("force-worst", "#fff", "#000", 1.2, "3 2"),
  /** Where the cutter touches first. */
  TOUCH("touch", "#fff", "#000", 2, ""),
  /** The stock as it bends. */
  BENT("bent", "none", "#000", 1.8, "7 3"),
  /** A curve of a chart. */
  CURVE("curve", "none", "#000", 1.8, ""),
  /** A second curve of a chart, distinguished by its dashes. */
  CURVE_WORST("curve-worst", "none", "#000", 1.4, "6 3"),
  /** The part of a chart where the cut chatters. */
  CHATTER("chatter", "#d8d8d8", "none", 0, ""),
  /** A third curve of a chart, distinguished by its dots. */
  CURVE_THIRD("curve-third", "none", "#000", 1.8, "1.5 3.5"),
  /** The part of a chart where the cut is free to go. */
  FREE("free", "#d8d8d8", "none", 0, ""),
  /** The area between the least and the greatest value. */
  BAND("band", "#e4e4e4", "none", 0, ""),
  /** Scales and frames of charts. */
  GRID("grid", "none", "#000", 0.35, "");

  private final String attributes;

  Ink(String name, String fill, String stroke, double width, String dashes) {
    String lines = "none".equals(stroke) ? "" : " stroke-width=\"" + width + "\"";
    String dashed = dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"";
    this.attributes =
        "class=\"i-" + name + "\" fill=\"" + fill + "\" stroke=\"" + stroke + "\"" + lines + dashed;
  }

  /** Class and presentation attributes. */
  String attributes() {
    return attributes;
  }
}
