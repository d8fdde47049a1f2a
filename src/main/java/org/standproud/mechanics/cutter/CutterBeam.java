package org.standproud.mechanics.cutter;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.cutter.SteppedCantilever.Section;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;

/**
 * The beam that stands for a cutter in its holder.
 *
 * <p>End mill: the fluted part counts with 0.8 of the cutting diameter (Kops and Vo, CIRP Annals
 * 39/1, 1990, 93-96, for two and four flutes), the rest with the shank. Face and shell mill: the
 * body counts with its whole diameter, being stiff, and the arbor carries it; arbors are steel
 * whatever the edges are. From the holder face to the spindle nose the holder counts as a steel
 * round.
 */
public final class CutterBeam {

  /** Bending diameter of a fluted part over its cutting diameter (Kops and Vo 1990). */
  public static final double FLUTED_DIAMETER_RATIO = 0.8;

  private CutterBeam() {}

  /**
   * The part of the beam outside the holder.
   *
   * @param cutter the cutter
   * @param toolModulusPa Young's modulus of the tool material in Pa; used for end mills only
   * @return sections from the cutting end to the holder face
   * @throws OutsideValidity if a length or diameter is no cutter's
   */
  public static SteppedCantilever outsideHolder(Cutter cutter, double toolModulusPa) {
    return new SteppedCantilever(sections(cutter, toolModulusPa));
  }

  /**
   * The whole beam from the cutting end to the spindle nose.
   *
   * @param cutter the cutter
   * @param toolModulusPa Young's modulus of the tool material in Pa; used for end mills only
   * @throws OutsideValidity if a length or diameter is no cutter's
   */
  public static SteppedCantilever toNose(Cutter cutter, double toolModulusPa) {
    List<Section> sections = sections(cutter, toolModulusPa);
    double holder = cutter.overhangM() - cutter.stickOutM();
    OutsideValidity.within("overhang beyond the stick-out", holder, 0, 1, "m");
    sections.add(new Section(holder, cutter.holderDiameterM(), ToolStrength.HOLDER_STEEL_PA));
    return new SteppedCantilever(sections);
  }

  private static List<Section> sections(Cutter cutter, double toolModulusPa) {
    boolean endMill = cutter.kind() == CutterKind.END_MILL;
    double modulus = endMill ? toolModulusPa : ToolStrength.HOLDER_STEEL_PA;
    double bodyDiameter = (endMill ? FLUTED_DIAMETER_RATIO : 1) * cutter.diameterM();
    OutsideValidity.within("stick-out of the cutter", cutter.stickOutM(), 0.001, 1, "m");
    double body = FastMath.min(cutter.fluteLengthM(), cutter.stickOutM());
    List<Section> sections = new ArrayList<>();
    sections.add(new Section(body, bodyDiameter, modulus));
    sections.add(new Section(cutter.stickOutM() - body, cutter.shankDiameterM(), modulus));
    return sections;
  }
}
