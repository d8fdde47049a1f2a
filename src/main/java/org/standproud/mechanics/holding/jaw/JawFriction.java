package org.standproud.mechanics.holding.jaw;

import static org.standproud.mechanics.OutsideValidity.within;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.Assumption;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawSide;
import org.standproud.setup.JawSurface;
import org.standproud.setup.Packing;
import org.standproud.setup.PackingKind;
import org.standproud.setup.PackingMaterial;
import org.standproud.setup.StockSurface;
import org.standproud.setup.request.HoldFields;

/**
 * Static friction of one jaw face against the stock, the lesser of the two faces: a pure number.
 *
 * <p>Laboratory figures (0.5 to 0.8 for clean metal) are not used. For faces that hold against
 * milling 0.10 to 0.20 is taken for machined and ground faces; published bands for clamped steel
 * joints are 0.12 to 0.18 degreased and 0.15 to 0.25 untreated, for aluminium 0.08 to 0.15 and 0.12
 * to 0.20 (clamped-joint friction table, 2009), for cast iron on cast iron 0.07 greased (handbook
 * table). Fixture texts (Korsakov; Goroshkin, from memory) give 0.10 to 0.16 for machined faces and
 * 0.4 to 1.0 for teeth that bite; less is taken here, since teeth do not bite a hard skin. Milling
 * vibration lowers the friction that can be used (Hurtado and Melkote, Wear 231, 1999, no figure
 * taken).
 *
 * @param coefficient least, likely and greatest coefficient
 * @param assumptions what was taken for what was not given
 */
public record JawFriction(Band coefficient, List<Assumption> assumptions) {

  private static final Band MACHINED = new Band(0.10, 0.15, 0.20);
  private static final Band SKIN = new Band(0.10, 0.14, 0.20);
  private static final Band SERRATED = new Band(0.15, 0.30, 0.45);
  private static final Band SOFT = new Band(0.08, 0.14, 0.20);
  private static final Band WORN = new Band(0.08, 0.12, 0.18);
  private static final Band PAPER = new Band(0.10, 0.18, 0.25);

  /** Least coefficient of any greased pair read: cast iron on cast iron. */
  private static final double GREASED = 0.07;

  /** Copies the list. */
  public JawFriction {
    assumptions = List.copyOf(assumptions);
  }

  /**
   * The friction as given, else the stated band of the weaker face.
   *
   * @param hold the hold
   * @param surface condition of the gripped faces; null if not known
   * @param state whether the faces are oily, or whether that is not known
   * @throws OutsideValidity if a given coefficient is not within 0.01 to 1
   */
  public static JawFriction of(Hold hold, @Nullable StockSurface surface, FaceState state) {
    if (hold.jawFriction() != null) {
      within("jaw friction", hold.jawFriction().low(), 0.01, 1, "");
      within("jaw friction", hold.jawFriction().high(), 0.01, 1, "");
      return new JawFriction(hold.jawFriction(), List.of());
    }
    Band fixed = face(hold, JawSide.FIXED, surface);
    Band movable = face(hold, JawSide.MOVABLE, surface);
    Band band = oiled(fixed.orLess(movable), state);
    return new JawFriction(band, stated(band, hold.vise().jawSurface()));
  }

  private static Band face(Hold hold, JawSide side, @Nullable StockSurface surface) {
    for (Packing packing : hold.packing()) {
      if (packing.side() == side) {
        return packed(packing);
      }
    }
    return switch (hold.vise().jawSurface()) {
      case GROUND -> surface == StockSurface.MACHINED ? MACHINED : SKIN;
      case SERRATED -> SERRATED;
      case SOFT -> SOFT;
      case WORN -> WORN;
    };
  }

  private static Band packed(Packing packing) {
    if (packing.kind() == PackingKind.CARD || packing.material() == PackingMaterial.PAPER) {
      return PAPER;
    }
    return packing.material() == PackingMaterial.ALUMINIUM ? SOFT : SKIN;
  }

  /**
   * Oil: the likely value falls to the least, the least by three tenths but not below grease. Faces
   * of which nothing is known are anything from oily to dry, one as likely as the other.
   */
  private static Band oiled(Band dry, FaceState state) {
    if (state == FaceState.CLEAN) {
      return dry;
    }
    double least = Math.min(dry.low(), Math.max(GREASED, 0.7 * dry.low()));
    return state == FaceState.OILY
        ? new Band(least, dry.low(), dry.likely())
        : new Band(least, (dry.low() + dry.likely()) / 2, dry.high());
  }

  private static List<Assumption> stated(Band band, JawSurface jaw) {
    String source =
        jaw == JawSurface.WORN || jaw == JawSurface.SERRATED
            ? "common practice, no source; kept below the fixture texts (from memory)"
            : "clamped-joint friction table, 2009, taken low for milling";
    List<Assumption> list = new ArrayList<>();
    list.add(
        new Assumption(
            HoldFields.JAW_FRICTION,
            "friction taken as " + band.low() + " to " + band.high() + " for the weaker face",
            source));
    return list;
  }
}
