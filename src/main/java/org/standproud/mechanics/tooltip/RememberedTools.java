package org.standproud.mechanics.tooltip;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.List;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.cutter.CutterBeam;
import org.standproud.mechanics.cutter.ToolStrength;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.ToolMaterial;

/**
 * Tools reduced last, kept by the cutter, so that a search over speeds and feeds pays for each
 * once. Holds a bounded number, may be shared between threads, of which one computes a tool.
 */
public final class RememberedTools {

  private static final double STEEL_PA = ToolStrength.HOLDER_STEEL_PA;
  private static final double STEEL_KG_PER_M3 = 7850;
  private static final double HSS_KG_PER_M3 = 8100;

  /** Tungsten carbide with a tenth of cobalt. */
  private static final double CARBIDE_KG_PER_M3 = 14500;

  private final Cache<Cutter, ToolOnSpindle> kept;

  /**
   * An empty memory.
   *
   * @param capacity how many tools it may hold
   */
  public RememberedTools(int capacity) {
    this.kept = Caffeine.newBuilder().maximumSize(capacity).build();
  }

  /**
   * A cutter in its holder from the cutting end to the spindle nose.
   *
   * @param cutter the cutter
   * @throws OutsideValidity if a length or diameter is no cutter's
   */
  public ToolOnSpindle of(Cutter cutter) {
    return kept.get(cutter, missing -> new ToolOnSpindle(parts(missing)));
  }

  /** The same sections as {@link CutterBeam}, with their mass. */
  private static List<RoundPart> parts(Cutter cutter) {
    boolean endMill = cutter.kind() == CutterKind.END_MILL;
    boolean carbide = cutter.toolMaterial() != ToolMaterial.HSS;
    double modulus =
        endMill ? ToolStrength.of(cutter.toolMaterial()).modulusPa().likely() : STEEL_PA;
    double density = !endMill ? STEEL_KG_PER_M3 : carbide ? CARBIDE_KG_PER_M3 : HSS_KG_PER_M3;
    double bodyDiameter = (endMill ? CutterBeam.FLUTED_DIAMETER_RATIO : 1) * cutter.diameterM();
    double body = Math.min(cutter.fluteLengthM(), cutter.stickOutM());
    double holder =
        OutsideValidity.within(
            "overhang beyond the stick-out", cutter.overhangM() - cutter.stickOutM(), 0, 1, "m");
    List<RoundPart> parts = new ArrayList<>();
    parts.add(new RoundPart(body, bodyDiameter, modulus, density, endMill));
    parts.add(
        new RoundPart(
            cutter.stickOutM() - body, cutter.shankDiameterM(), modulus, density, endMill));
    parts.add(new RoundPart(holder, cutter.holderDiameterM(), STEEL_PA, STEEL_KG_PER_M3, false));
    return parts;
  }
}
